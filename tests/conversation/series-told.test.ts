import { describe, expect, test } from 'vitest';
import { talk } from './talk.ts';

const said = (text: string) => talk([`sam: ${text}`]).last;

describe('panels in series that only a number counts', () => {
  test('a label with its own coefficient and test conditions', () => {
    const { intent, text, verdict } = said(
      'Voc 49.5 at STC, tempco -0.27%/C, coldest morning -8C. two in series on a 100/30 controller, okay?',
    );
    expect(intent).toBe('solar-wiring');
    expect(verdict).toBe('no');
    // 2 × 49.5 × (1 + 0.0027 × 33) = 107.8 V
    expect(text).toMatch(/^No, series: about 108 V at -8 °C is past the controller's 100 V/);
    expect(text).not.toMatch(/stc|Assumed|0\.27/i);
  });

  test.each([
    ['open circuit 24V, 4 x in series on a 100V controller, winter mornings 0C', /^No, series: about 104 V/],
    ['Voc 22.4 each, 3 in series, coldest -5C, 100/20 mppt ok?', /^Yes, series: about 74 V/],
    [
      '2 of these in series ok on a 100V regulator? voc 46 each, -5 mornings',
      /^No, series: about 101 V at -5 °C/,
    ],
    ['400W with Voc 37, putting 3 wired in series, controller max 100V', /^No, series: about 123 V/],
  ])('%s', (text, line) => expect(said(text).text).toMatch(line));

  test('a count of batteries is none of panels', () => {
    expect(said('100Ah battery and a panel voc 22V, the batteries two in series?').text).not.toMatch(
      /44 V|49 V/,
    );
  });

  test('a coefficient of power is left alone', () => {
    const { text } = said(
      'Voc 49.5, Pmax coefficient -0.35%/C, coldest -8C. two in series on a 150/30 controller, okay?',
    );
    expect(text).toMatch(/about 109 V at -8 °C/);
  });
});
