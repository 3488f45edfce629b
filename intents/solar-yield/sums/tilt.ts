import type { Reply } from '#answer/reply.ts';
import { declination } from '#engine/solar/sun-rules.ts';
import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { exactFigure } from '../../figures.ts';
import type { RequestContext } from '../../intent.ts';
import { isSpotted } from '../../spotting.ts';

const asksAngle: readonly string[] = [
  'angle|tilt|slope best|what|which|should|how -worth -flat -loss -lose -gain -difference -north_or',
];
/** Words that make a number a latitude. */
const sides: readonly string[] = ['south|north|latitude|lat|s|n'];
const mostLatitude = 66;
/** Middle days of months are about the 15th. */
const middleDay = 15;
const daysOfMonth = 30.4;

/** The latitude that a message tells as a plain number ("37 south"), degrees. */
function latitudeTold({ parsed }: RequestContext): number | undefined {
  const { words, mentions } = parsed.recognised;
  if (!isSpotted(words, sides)) return undefined;
  return mentions.find(({ kind, value }) => kind === 'number' && value >= 5 && value <= mostLatitude)?.value;
}

/** The tilt that faces the midday sun, at the latitude told and in its month; undefined: that isn't asked. */
export function tiltOf(facts: Facts, setting: RequestContext): Reply | undefined {
  const { words } = setting.parsed.recognised;
  const latitude = facts.latitudeDeg ?? latitudeTold(setting);
  if (latitude === undefined || !isSpotted(words, asksAngle)) return undefined;
  const isSouth = latitude < 0 || words.includes('south') || words.includes('s');
  const across = Math.abs(latitude);
  const { month } = facts;
  if (month === undefined)
    return reply(
      across,
      `About ${plain(across)}° the year round: ${plain(across + 15)}° in winter, ${plain(Math.max(0, across - 15))}° in summer.`,
      isSouth,
    );
  const J = Math.round((month - 1) * daysOfMonth + middleDay);
  const sunDeg = (run(declination, { J }) * 180) / Math.PI;
  const tilt = Math.max(0, Math.round((across + (isSouth ? sunDeg : -sunDeg)) / 5) * 5);
  return reply(
    tilt,
    `About ${plain(tilt)}° from flat, facing ${isSouth ? 'north' : 'south'}, for the midday sun of that month.`,
    isSouth,
  );
}

const reply = (tilt: number, headline: string, isSouth: boolean): Reply => ({
  headline,
  lines: [
    `Ten degrees off cost next to nothing. True ${isSouth ? 'north' : 'south'}, clear of shade from 10 to 3, counts for more.`,
  ],
  verdict: null,
  figures: { tilt: exactFigure(tilt, '°') },
  next: ['200W panel in july in melbourne, tilted'],
});
