import { present } from '#basics/present.ts';
import type { Mention } from '../../recognise/mention.ts';
import { skyFillers, skyJoins, skySigns } from '../../words/en/day-plans.ts';
import { type Fact, fact } from './symbol.ts';

/** The sky that a mention names by itself. */
const skyOf = (m: Mention | undefined): string | undefined =>
  m?.kind === 'sky'
    ? m.key
    : m?.kind === 'sign' && Object.hasOwn(skySigns, m.text)
      ? skySigns[m.text]
      : m?.kind === 'word' && m.text === 'mix'
        ? 'mixed'
        : undefined;

/** The sky told from a mention on: "sunny", "sun and cloud", "mixed cloud", "bit of sun bit of cloud". */
export function skyAt(
  mentions: readonly Mention[],
  at: number,
  isDay: (i: number) => boolean,
): Fact | undefined {
  let sky = skyOf(mentions[at]);
  if (!sky) return undefined;
  let to = at + 1;
  for (;;) {
    let next = to;
    let isJoined = false;
    while (
      next < mentions.length &&
      next - to < 5 &&
      skyFillers.has(present(mentions[next]).text) &&
      !present(mentions[next]).isNewLine
    ) {
      if (skyJoins.has(present(mentions[next]).text)) isJoined = true;
      next++;
    }
    const more = skyOf(mentions[next]);
    if (!more || isDay(next) || present(mentions[next]).isNewLine) break;
    const isPart = present(mentions[next]).kind === 'sign' || present(mentions[to - 1]).kind === 'sign';
    const isWord = /^(?:sun|clouds?|sunny|sky|skies)$/.test(present(mentions[next]).text);
    if (next === to) {
      if (sky === more && (isPart || present(mentions[next]).text !== present(mentions[to - 1]).text)) to++;
      else if (sky === 'mixed' && isWord) to++;
      else if (sky === 'mixed' && isPart) to++;
      else break;
    } else if (
      present(mentions[to]).text === '/' &&
      (next > to + 1 || sky === more || mentions[next + 1]?.text === '/' || mentions[at - 1]?.text === '/')
    )
      break;
    else if (isJoined || present(mentions[to]).text === 'of') {
      sky = sky === more ? sky : 'mixed';
      to = next + 1;
    } else break;
  }
  return fact(
    at,
    to,
    'sky',
    mentions.slice(to, to + 1).some(m => m.text === 'mixed' && m.kind === 'sky') && to - at > 1
      ? 'mixed'
      : sky,
  );
}
