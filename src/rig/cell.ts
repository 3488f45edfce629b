/** Volts at which a power bank's mAh are told: those of one lithium cell. Common practice. */
export const powerBankCellV = 3.7;
