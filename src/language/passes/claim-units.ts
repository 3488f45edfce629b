import type { Quantity } from '../state.ts';

const daysFrom = 24;

/** A claim as people hear it: days stay days, hours hours, everything else in its base unit. */
export function shortUnit(quantity: Quantity): { value: number; unit: string } {
  const { unit, value } = quantity;
  switch (unit.dimension) {
    case 'time':
      return unit.factor >= daysFrom ? { value: round(value / 24), unit: 'days' } : { value, unit: 'h' };
    case 'current':
      return quantity.per === 'day' ? { value, unit: 'Ah' } : { value, unit: 'A' };
    case 'charge':
      return { value, unit: 'Ah' };
    case 'power':
      return { value, unit: 'W' };
    case 'energy':
      return { value, unit: 'Wh' };
    case 'voltage':
      return { value, unit: 'V' };
    case 'percent':
      return { value, unit: '%' };
    case 'area':
      return { value, unit: 'mm²' };
    case 'length':
      return unit.symbol === 'mm' ? { value: round(value * 1000), unit: 'mm²' } : { value, unit: 'm' };
    case 'gauge':
      return { value, unit: 'AWG' };
    case 'sun':
      return { value, unit: 'h' };
    default:
      return { value, unit: unit.symbol };
  }
}

const round = (value: number): number => Math.round(value * 1000) / 1000;
