import { present } from '#basics/present.ts';
import type { WiringBranch, WiringChart, WiringLead } from './chart.ts';
import { type Drawing, edge, type Mark, rect, stroke, text, width } from './drawing.ts';
import { framed, headOf } from './frame.ts';
import { drawnNames, wrapped } from './letters.ts';
import { cableOf, fuseOf } from './words.ts';

const box = { edge: 6, wide: 96, tall: 46, gap: 16 } as const;
/** Height of a wire between two boxes of a branch. */
const drop = 44;
const bus = { x: width / 2, thick: 7 } as const;
const battery = { wide: 150, tall: 44 } as const;

const tallOf = ({ boxes }: WiringBranch): number =>
  boxes.length * box.tall + (boxes.length - 1) * drop + box.gap;

/** A box with its name in at most two lines, or one and a quiet word. */
function boxed(x: number, y: number, wide: number, tall: number, name: string, also?: string): Mark[] {
  const lines = wrapped(name, wide - 10, 2, 11.5, 600);
  const rows = [
    ...lines.map(line => [line, 600, 'text'] as const),
    ...(also ? [[also, 400, 'quiet'] as const] : []),
  ];
  const first = y + tall / 2 + 4 - ((rows.length - 1) * 14) / 2;
  return [
    rect(x, y, wide, tall, { fill: 'box', stroke: 'quiet', thick: 1.2, round: 5 }),
    ...rows.map(([line, weight, ink], i) =>
      text(x + wide / 2, first + 14 * i, line, {
        size: weight === 600 ? 11.5 : 11,
        weight,
        ink,
        anchor: 'middle',
      }),
    ),
  ];
}

/** A fuse on a wire: a small box with the wire going through. */
const fuse = (x: number, y: number, isUpright: boolean): Mark =>
  isUpright
    ? rect(x - 4, y - 8, 8, 16, { fill: 'ground', stroke: 'limit', thick: 1.6, round: 2 })
    : rect(x - 8, y - 4, 16, 8, { fill: 'ground', stroke: 'limit', thick: 1.6, round: 2 });

/** A wire across, from a box to the bus bar: its cable above, its fuse below and drawn at the battery's end. */
function across(from: number, y: number, lead: WiringLead): Mark[] {
  const middle = (from + bus.x + Math.sign(from - bus.x) * bus.thick * 0.5) / 2;
  const rated = fuseOf(lead);
  return [
    stroke([from, y], [bus.x, y], 'line', { thick: 2 }),
    text(middle, y - 7, cableOf(lead), { anchor: 'middle' }),
    ...(rated === undefined
      ? []
      : [
          fuse(bus.x + Math.sign(from - bus.x) * 16, y, false),
          text(middle, y + 16, rated, { weight: 600, ink: 'limit', anchor: 'middle' }),
        ]),
  ];
}

/** A wire down, its words to the right of it; the fuse at its upper or its lower end. */
function down(x: number, from: number, to: number, lead: WiringLead, isFuseBelow = false): Mark[] {
  const rated = fuseOf(lead);
  const middle = (from + to) / 2;
  return [
    stroke([x, from], [x, to], 'line', { thick: 2 }),
    text(x + 12, middle - (rated === undefined ? -4 : 3), cableOf(lead)),
    ...(rated === undefined
      ? []
      : [
          fuse(x, isFuseBelow ? to - 14 : from + 14, true),
          text(x + 12, middle + 12, rated, { weight: 600, ink: 'limit' }),
        ]),
  ];
}

/** A branch beside the bus bar, from its far end to it. */
function branchAt({ side, boxes }: WiringBranch, top: number, names: readonly string[]): Mark[] {
  const x = side === 'in' ? box.edge : width - box.edge - box.wide;
  return boxes.flatMap(({ also, lead }, i): Mark[] => {
    const y = top + i * (box.tall + drop);
    const isLast = i === boxes.length - 1;
    return [
      ...(isLast
        ? across(side === 'in' ? x + box.wide : x, y + box.tall / 2, lead)
        : down(x + 14, y + box.tall, y + box.tall + drop, lead)),
      ...boxed(x, y, box.wide, box.tall, present(names[i]), also),
    ];
  });
}

/** One cable: what feeds it at the left, what hangs on it at the right, the fuse at the battery's end. */
function oneLead({ battery: feeds, branches: [branch] }: WiringChart, top: number): Mark[] {
  const { name, lead, also } = present(present(branch).boxes[0]);
  const [near, far] = drawnNames([feeds, name]) as [string, string];
  const from = box.edge + box.wide;
  const to = width - from;
  const y = top + box.tall / 2;
  const rated = fuseOf(lead);
  return [
    stroke([from, y], [to, y], 'line', { thick: 3 }),
    text(width / 2, y - 9, cableOf(lead), { size: 12, anchor: 'middle' }),
    ...(rated === undefined
      ? []
      : [
          fuse(from + 18, y, false),
          text(width / 2, y + 19, rated, { size: 12, weight: 600, ink: 'limit' as const, anchor: 'middle' }),
        ]),
    ...boxed(box.edge, top, box.wide, box.tall, near),
    ...boxed(to, top, box.wide, box.tall, far, also),
  ];
}

/** The words at the foot: what is not drawn, then what could hurt. */
function footOf(
  { cut, cautions }: WiringChart,
  from: number,
): { readonly marks: Mark[]; readonly bottom: number } {
  const marks: Mark[] = [];
  let y = from;
  const put = (words: string, ink: 'quiet' | 'limit', weight: 400 | 600): void => {
    for (const line of wrapped(words, width - 2 * edge, 4, 11.5, weight)) {
      marks.push(text(edge, y, line, { size: 11.5, ink, weight }));
      y += 15;
    }
    y += 3;
  };
  if (cut) put(cut, 'quiet', 400);
  for (const caution of cautions) put(caution, 'limit', 600);
  return { marks, bottom: y - 4 };
}

/** A rig's wiring: what charges at the left, what runs at the right, the battery at the foot of the bus bar. */
export function drawWiring(chart: WiringChart): Drawing {
  const head = headOf(chart);
  const top = head.bottom + 12;
  if (!chart.main) {
    const foot = footOf(chart, top + box.tall + 24);
    return framed(head, [...oneLead(chart, top), ...foot.marks], foot.bottom);
  }
  const names = drawnNames([chart.battery, ...chart.branches.flatMap(({ boxes }) => boxes.map(b => b.name))]);
  const ends = { in: top, out: top };
  const marks: Mark[] = [];
  let named = 1;
  for (const branch of chart.branches) {
    const { side, boxes } = branch;
    marks.push(...branchAt(branch, ends[side], names.slice(named, named + boxes.length)));
    ends[side] += tallOf(branch);
    named += boxes.length;
  }
  const end = Math.max(ends.in, ends.out);
  const bank = end + 50;
  const foot = footOf(chart, bank + battery.tall + 22);
  marks.push(
    ...down(bus.x, end - 6, bank, chart.main, true),
    rect(bus.x - bus.thick / 2, top, bus.thick, end - top - 6, { fill: 'line', round: 3 }),
    ...boxed(bus.x - battery.wide / 2, bank, battery.wide, battery.tall, present(names[0])),
    ...foot.marks,
  );
  return framed(head, marks, foot.bottom);
}
