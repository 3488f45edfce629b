/** What a colour is for. */
export type Ink =
  | 'ground'
  | 'text'
  | 'quiet'
  | 'grid'
  | 'night'
  | 'line'
  | 'before'
  | 'limit'
  | 'good'
  | 'sun'
  | 'box';

export type Theme = 'light' | 'dark';

/** Okabe and Ito's colour-blind safe palette, with slate for ink; on dark ground the same hues, lighter. */
export const inks: Readonly<Record<Theme, Readonly<Record<Ink, string>>>> = {
  light: {
    ground: '#ffffff',
    text: '#1f2933',
    quiet: '#52606d',
    grid: '#e4e7eb',
    night: '#dfe5ec',
    line: '#0072b2',
    before: '#7b8794',
    limit: '#a34300',
    good: '#00714f',
    sun: '#e69f00',
    box: '#f4f6f8',
  },
  dark: {
    ground: '#161c23',
    text: '#e8edf2',
    quiet: '#a9b6c2',
    grid: '#2c3641',
    night: '#232d38',
    line: '#56b4e9',
    before: '#8d9aa7',
    limit: '#ff9d5c',
    good: '#4cc9a0',
    sun: '#f0c24b',
    box: '#212a34',
  },
};
