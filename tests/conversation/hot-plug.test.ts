import { describe, expect, test } from 'vitest';
import { isHotPlug } from '#conversation/answering/hot-plug.ts';
import { meaningOf } from '#language/hazards/features.ts';
import { talk } from './talk.ts';

test.each([
  ['the 12v plug gets that hot you cant touch it but the coolbox is nice and cold', true],
  ['12v socket is melting a bit where the compressor plugs in', true],
  ['the lead to the inverter gets burning hot, how long will 100ah last at 60A', true],
  ['the plug on the fridge lead is too hot to hold, battery is 100Ah lithium', true],
  ['battery is too hot to touch and so is the plug', false],
  ['plug on the battery is fine but the battery itself is too hot to touch', false],
  ['the socket is hot and smells of burning plastic', false],
  ['the cable is hot and smoking', false],
  ['inverter too hot to touch', false],
  ['how hot does it get there in summer', false],
])('%s: %s', (text, isPlug) => expect(isHotPlug(meaningOf(text))).toBe(isPlug));

describe('what is said', () => {
  const said = (text: string) => talk([`sam: ${text}`]).last;

  test('a hot plug is unplugged, and its question answered all the same', () => {
    const { text, hazards } = said(
      'the 12v plug gets that hot you cant touch it but the coolbox is nice and cold. its 4A, how long will it run on 75ah?',
    );
    expect(hazards).toEqual(['over-current']);
    expect(text).toMatch(/^Unplug it and let it cool[^\n]*\nIt lasts/);
  });

  test.each([
    ['we’ve got the bbq coals inside the awning to keep the bubs warm', /fresh air now, the coals too/],
    [
      'gonna bring the barbie inside the annex for heat tonight',
      /^No: no stove, gas heater or coals for warmth/,
    ],
    ['is it ok to run the gas heater in the tent overnight if we crack a window', /^No: no stove/],
    ['can we leave the engine running while we sleep in the van to keep warm', /^No: no engine left running/],
    ['got the gas stove going in the tent now to warm up', /^Everybody out into fresh air now/],
    ['everyone has a headache, gas heater in the tent, what now', /^Everybody out into fresh air now/],
  ])('fumes: %s', (text, line) => {
    const { text: answer, hazards } = said(text);
    expect(hazards).toContain('carbon-monoxide');
    expect(answer).toMatch(line);
    expect(answer).toMatch(/emergency number/);
  });

  test('no fuse: what was told is not asked for, and a cable that would do is named', () => {
    const { text } = said('i’ve left the fuse out, 10mm2 to a 600W inverter 1.5 m away, thick enough?');
    expect(text).toMatch(/^It needs a fuse at the battery end/);
    expect(text).toMatch(/10 mm² loses 2\.8 %/);
    expect(text).not.toMatch(/Tell me/);
    expect(said('do I need a fuse on the battery wire').text).toMatch(
      /Tell me load and cable|Yes: each cable/,
    );
  });
});
