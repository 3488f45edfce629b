/** Volts at which a power bank's mAh are told: those of one lithium cell. Common practice. */
export const powerBankCellV = 3.7;

/** What a power bank or station gives of its label after its own converters. Common practice. */
export const powerBankShare = 0.85;
