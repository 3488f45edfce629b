import { describe, expect, test } from 'vitest';
import { isHotJoint, isHotPlug } from '#conversation/answering/hot-plug.ts';
import { meaningOf } from '#language/hazards/features.ts';
import { talk } from './talk.ts';

test.each([
  ['the 12v plug gets that hot you cant touch it but the coolbox is nice and cold', true],
  ['12v socket is melting a bit where the compressor plugs in', true],
  ['the lead to the inverter gets burning hot, how long will 100ah last at 60A', true],
  ['the plug on the fridge lead is too hot to hold, battery is 100Ah lithium', true],
  ['crimp on the battery terminal is hot after running the kettle', true],
  ['terminals on the battery get hot at 50A', true],
  ['battery and terminals are both hot', false],
  ['battery terminal hot and case swollen', false],
  ['battery is too hot to touch and so is the plug', false],
  ['plug on the battery is fine but the battery itself is too hot to touch', false],
  ['the socket is hot and smells of burning plastic', false],
  ['the cable is hot and smoking', false],
  ['inverter too hot to touch', false],
  ['how hot does it get there in summer', false],
])('%s: %s', (text, isPlug) => expect(isHotPlug(meaningOf(text))).toBe(isPlug));

test.each([
  ['battery terminals get warm running the inverter', true],
  ['the lug on the inverter cable is warm', true],
  ['is it normal for battery terminals to get warm charging at 40A', true],
  ['i plug in at the post so the heater keeps us warm, 100Ah battery', false],
  ['need to join two batteries in warm weather', false],
])('%s: joint %s', (text, isJoint) => expect(isHotJoint(meaningOf(text))).toBe(isJoint));

describe('what is said', () => {
  const said = (text: string) => talk([`sam: ${text}`]).last;

  test.each([
    'twisted the two panel wires together and taped them, gets warm at the join at 15A, is 4mm2 thick enough?',
    'joined the fridge lead with a bit of tape and it gets hot there, 8A over 4 m of 4mm2 ok?',
    'battery terminals get warm running the 1000W inverter, 25mm2 2m ok?',
    'crimp on the battery terminal is hot after running the kettle, will 16mm2 do for 60A',
    'butt splice on my cable hot to touch at 20A. 6mm2 over 3m enough?',
    'the lug on the negative post gets really hot under 80A, how long will my 200Ah last',
  ])('a hot joint is switched off and remade: %s', text => {
    const { text: answer, hazards } = said(text);
    expect(hazards).toEqual(['over-current']);
    const lines = answer.split('\n').slice(0, 3).join('\n');
    expect(lines).toMatch(/^Switch it off: a joint that gets warm is a bad contact/);
    expect(lines).toMatch(/crimped lug[^\n]*fuse at the battery end/i);
  });

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
    const { text } = said('no fuse in it, 10mm2 to a 600W inverter 1.5 m away, thick enough?');
    expect(text).toMatch(/^It needs a fuse at the battery end/);
    expect(text).toMatch(/10 mm² loses 2\.8 %/);
    expect(text).not.toMatch(/Tell me/);
    expect(said('do I need a fuse on the battery wire').text).toMatch(
      /Tell me load and cable|Yes: each cable/,
    );
  });
});
