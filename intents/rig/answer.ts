import type { Reply } from '#answer/reply.ts';
import { listIn, sentence } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import { mostKept } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { describeRig } from '../describe.ts';
import { factsOf } from '../facts.ts';
import type { RequestContext } from '../intent.ts';
import { learnedLines } from '../learning-words.ts';
import { wiringChart } from '../wiring-chart.ts';
import type { RigChange } from './compute.ts';

const whose = (owner: string, setting: RequestContext, { say }: Speech): string => {
  const sharers = setting.sharing?.(owner) ?? [];
  if (owner !== '' && sharers.length > 1) {
    const others = sharers.filter(one => one !== setting.ownKey).map(one => sentence(one));
    return others.length < sharers.length
      ? say('rig-with', 'the rig of you and {others}', { others: listIn(others, english) })
      : say('rig-of', "{owner}'s rig", { owner: listIn(others, english) });
  }
  if (owner === setting.ownKey || (owner === '' && setting.kind === 'private'))
    return say('your-rig', 'your rig');
  return owner === ''
    ? say('the-rig', 'the rig')
    : say('rig-of', "{owner}'s rig", { owner: sentence(owner) });
};

const nextFor = ({ rig }: RigChange, { say }: Speech): string[] => {
  const hasUse = !!rig.loads?.length || rig.dailyUseAh !== undefined;
  const found: string[] = [];
  if (rig.batteries?.length && hasUse) found.push(say('next-lasts', 'how long will it last?'));
  if (hasUse) found.push(say('next-use', "what's our daily use?"));
  if (rig.solar?.length) found.push(say('next-yield', 'what will the solar make?'));
  return found;
};

/** Characters of a first line. */
const firstLine = 100;

/** As much of a list as the first line has room for, and the rest of it. */
function split(told: string): readonly [string, string] {
  const at = told.lastIndexOf('; ', firstLine);
  return at < 0 ? [told, ''] : [told.slice(0, at + 1), sentence(told.slice(at + 2))];
}

/** Words for a rig shown or changed; whoever can't manage the chat's data can't delete the chat's rig. */
export function answerRig(change: RigChange, setting: RequestContext): Reply {
  const { owner, rig, did } = change;
  const w = english;
  const name = whose(owner, setting, w);
  if (did === 'unknown')
    return {
      headline: w.say('unknown-rig', "I don't know {name} yet. What is in it?", { name }),
      lines: [w.say('tell-rig', 'Tell me in a line, say “rig: 100Ah AGM, fridge 1.2A, 160W solar”.')],
    };
  if (did === 'theirs')
    return {
      headline: w.say('only-owner', 'Only {owner} or an admin of the group can change {name}.', {
        owner: sentence(owner),
        name,
      }),
      rig,
    };
  if (did === 'full')
    return {
      headline: w.say(
        'rigs-full',
        'I keep {most} rigs in a chat, and that many are here: nothing new is noted.',
        {
          most: String(mostKept.rigs),
        },
      ),
      lines: [
        w.say('rigs-room', 'Say “forget my rig” for one that is not needed any more, then tell me again.'),
      ],
    };
  if (did === 'big')
    return {
      headline: w.say(
        'rig-big',
        'I keep {most} things in a rig: that was too many, and it stays as it was.',
        {
          most: String(mostKept.loads),
        },
      ),
      lines: [w.say('rig-room', 'Tell me the big users, or take some out: “remove the radio”.')],
    };
  if (did === 'undone') {
    const back = setting.undo ?? {};
    const parts = describeRig(rig, w).join('; ');
    return {
      headline: parts
        ? w.say('undone', 'Undone. {name}: {parts}.', { name: sentence(name), parts })
        : w.say('undone-none', 'Undone: {name} is as unknown as before.', { name }),
      rig,
      remember: { rigs: back },
    };
  }
  const parts = describeRig(rig, w);
  const gaps = {
    name: sentence(name),
    what: parts.length > 0 ? parts.join('; ') : w.say('nothing-so-far', 'nothing so far'),
  };
  const told =
    did === 'shown'
      ? w.say('rig-shown', '{name}: {what}.', gaps)
      : did === 'kept'
        ? w.say('rig-kept', 'Noted. {name}: {what}.', gaps)
        : did === 'added'
          ? w.say('rig-added', 'Added. {name}: {what}.', gaps)
          : w.say('rig-changed', 'Changed. {name}: {what}.', gaps);
  // A long list has lines of its own.
  const [headline, ...rest] = told.length > firstLine ? split(told) : [told];
  const missed = listIn(change.missed, w);
  const learned = setting.learnedOf?.(owner);
  const lines = [
    ...rest,
    ...(missed ? [w.say('not-found', "I didn't find {missed} in it.", { missed })] : []),
    ...(did === 'shown' && learned ? learnedLines(rig, learned, setting.at, w) : []),
  ];
  return {
    headline,
    lines,
    rig,
    chart: wiringChart(factsOf(rig), setting.mainsV),
    cautions: loadCautions(factsOf(rig)),
    next: nextFor(change, w),
    ...(did === 'shown' ? {} : { remember: { rigs: { [owner]: rig } } }),
  };
}
