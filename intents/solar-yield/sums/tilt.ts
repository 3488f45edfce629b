import type { Reply } from '#answer/reply.ts';
import { sentence } from '#answer/say.ts';
import { declination } from '#engine/solar/sun-rules.ts';
import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { exactFigure } from '../../figures.ts';
import type { RequestContext } from '../../intent.ts';
import { isSpotted } from '../../spotting.ts';
import { whereAndWhen, whereOf } from '../../sun.ts';

const asksAngle: readonly string[] = [
  'angle|tilt|slope|steep|steeply best|what|which|should|how -worth -flat -loss -lose -gain -difference -north_or',
  'how_many_degrees should|do|does|from|off|up|tilt',
];
/** Words that ask which way they look. */
const asksWay: readonly string[] = [
  'direction|face|facing|point|aim which|what|how|where|should|best|do -worth -flat -loss -lose -gain -difference -north_or -east -west -much -make -more',
];
/** Words that make a number a latitude. */
const sides: readonly string[] = ['south|north|latitude|lat|s|n'];
const mostLatitude = 66;
/** Middle days of months are about the 15th. */
const middleDay = 15;
const daysOfMonth = 30.4;
/** Under this tilt a panel may as well lie flat, degrees. */
const leastTilt = 5;

/** The latitude that a message tells as a plain number ("37 south"), degrees. */
function latitudeTold({ parsed }: RequestContext): number | undefined {
  const { words, mentions } = parsed.recognised;
  if (!isSpotted(words, sides)) return undefined;
  return mentions.find(({ kind, value }) => kind === 'number' && value >= 5 && value <= mostLatitude)?.value;
}

/** The tilt that faces the midday sun, at the latitude told and in its month; undefined: that isn't asked. */
export function tiltOf(facts: Facts, setting: RequestContext): Reply | undefined {
  const { words } = setting.parsed.recognised;
  const isWay = isSpotted(words, asksWay);
  if (!isWay && !isSpotted(words, asksAngle)) return undefined;
  const ofPlace = whereOf(facts).latitudeDeg;
  const latitude = ofPlace ?? latitudeTold(setting);
  if (latitude === undefined) return isNowhere(facts) ? anywhere(isWay) : undefined;
  const isSouth = ofPlace === undefined ? words.includes('south') || words.includes('s') : latitude < 0;
  const across = Math.round(Math.abs(latitude));
  const { month } = facts;
  const year = `${plain(across)}° the year round: ${plain(across + 15)}° in winter, ${plain(Math.max(0, across - 15))}° in summer.`;
  const faces = isSouth ? 'north' : 'south';
  if (month === undefined)
    return reply(across, isWay ? `${sentence(faces)}, tilted about ${year}` : `About ${year}`, isSouth);
  const J = Math.round((month - 1) * daysOfMonth + middleDay);
  const sunDeg = (run(declination, { J }) * 180) / Math.PI;
  const tilt = Math.max(0, Math.round((across + (isSouth ? sunDeg : -sunDeg)) / 5) * 5);
  const midday =
    ofPlace === undefined
      ? 'the midday sun of that month'
      : `the midday sun${whereAndWhen(facts, { ...whereOf(facts), month })}`;
  if (tilt < leastTilt)
    return reply(tilt, `Flat, or nearly: ${midday} stands almost overhead.`, isSouth, `About ${year}`);
  return reply(
    tilt,
    isWay
      ? `${sentence(faces)}, tilted about ${plain(tilt)}° from flat: square to ${midday}.`
      : `About ${plain(tilt)}° from flat, facing ${faces}, for ${midday}.`,
    isSouth,
    `About ${year}`,
  );
}

const isNowhere = ({ place, peakSunHours }: Facts): boolean => (place ?? peakSunHours) === undefined;

/** Where no place is told. */
const anywhere = (isWay: boolean): Reply => ({
  headline: isWay
    ? 'To the midday sun: north in Australia, south in Europe or North America.'
    : 'About as many degrees as your latitude: some 15 more in winter, 15 less in summer.',
  lines: [
    isWay
      ? 'Tilt them about as many degrees as your latitude: some 15 more in winter, 15 less in summer.'
      : 'Facing the midday sun: north in Australia, south in Europe or North America.',
    'Near enough will do: ten degrees off cost next to nothing. Tell me where you are for the angle there.',
  ],
  verdict: null,
  next: ['200W panel in july in melbourne, tilted'],
});

const reply = (tilt: number, headline: string, isSouth: boolean, year?: string): Reply => ({
  headline,
  lines: [
    ...(year ? [year] : []),
    `Ten degrees off cost next to nothing. True ${isSouth ? 'north' : 'south'}, clear of shade from 10 to 3, counts for more.`,
  ],
  verdict: null,
  figures: { tilt: exactFigure(tilt, '°') },
  next: ['200W panel in july in melbourne, tilted'],
});
