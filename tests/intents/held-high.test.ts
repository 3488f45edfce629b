import { expect, test } from 'vitest';
import { talk } from '../conversation/talk.ts';

const said = (text: string) => talk([`sam: ${text}`]).last.text;

test.each([
  ['float voltage for agm battery, charger stuck at 14.4V for days', /14\.4 V dries AGM out.*13\.5 V/],
  ['my charger sits at 14.4 V on the gel and never drops, been 3 days, ok?', /dries gel out.*13\.4 V/],
  ['what float voltage for gel, mine stays on 14.2 all week', /14\.2 V dries gel out/],
  ['left the agm on charge since monday still showing 14.4 volts', /14\.4 V dries AGM out/],
  ['my wet battery has been held at 14.6V for weeks, is it ok', /dries a wet battery out.*13\.8 V/],
  ['28.8V on my 24V agm stays there for days, should it drop?', /28\.8 V dries AGM out.*27 V/],
  ['lithium charger stuck at 14.4V for 3 days', /lithium wants no more than about 13\.5 V/],
])('%s', (text, line) => {
  expect(said(text)).toMatch(/^Not right for days on end:/);
  expect(said(text)).toMatch(line);
});

test.each([
  'is 14.4V normal while charging agm',
  'battery at 14.4V on charge for 3 hours, normal?',
  'charger at 14.4V, will 100Ah agm last 3 days with a 1A load',
  'agm charging at 14.4 after 3 days of rain, good?',
  'agm left for 3 weeks reads 12.4V, ok?',
])('%s: no volts held for days', text => expect(said(text)).not.toMatch(/days on end/));
