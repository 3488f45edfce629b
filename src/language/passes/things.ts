import { things as catalogued, isAlwaysOn, type Named } from '#catalog/appliances.ts';
import { gear } from '#catalog/gear-table.ts';
import { Lexicon } from '../lexicon.ts';
import {
  markKnown,
  type NamedGear,
  quantityAt,
  type State,
  type Thing,
  textAt,
  thing,
  wordAt,
} from '../state.ts';
import { genericNouns, plainWords, weakNames } from '../words/en/common.ts';
import { modifiers as modifierRows } from '../words/en/modifiers.ts';
import { list } from '../words/list.ts';
import { cueLexicon } from './cues.ts';

interface Entry {
  readonly name: string;
  readonly appliance?: Named;
  readonly gear?: NamedGear;
}

/** Plural of a noun phrase's last word: "battery" → "batteries", "torch" → "torches". */
export function plural(name: string): string {
  if (/[^aeiou]y$/.test(name)) return `${name.slice(0, -1)}ies`;
  return /(s|x|ch|sh)$/.test(name) ? `${name}es` : `${name}s`;
}

export const thingLexicon = new Lexicon<Entry>();
for (const row of catalogued)
  for (const name of [row.id, ...row.names]) addBoth(name, { name, appliance: row });
for (const row of gear satisfies readonly NamedGear[])
  for (const name of row.names) addBoth(name, { name, gear: row });

function addBoth(name: string, entry: Entry): void {
  thingLexicon.add(name, entry);
  thingLexicon.add(plural(name), entry);
}

/** "A CPAP with the humidifier on, 55 W": one machine. */
function humidifiers(state: State): void {
  if (!state.things.some(one => one.name === 'cpap')) return;
  for (const one of state.things) if (one.name === 'humidifier') one.isDropped = true;
}

/** No message names more; facts hold sixty loads. */
const mostThings = 120;

/** Finds the appliances and the gear that are named, longest name first. */
export function things(state: State): void {
  const { tokens } = state;
  for (let i = 0; i < tokens.length && state.things.length < mostThings; i++) {
    const found = tokens[i]!.kind === 'word' ? thingLexicon.find(state, i) : undefined;
    if (found) {
      const { value, length } = found;
      if (isVerb(state, i, value)) continue;
      const last = state.things.at(-1);
      if (last?.kind === 'load' && value.appliance && last.end === i) {
        // "led downlights", "tv dvd player": one thing
        last.end = i + length;
        last.name = `${last.name} ${value.name}`;
        last.appliance = value.appliance;
        markKnown(state, i, i + length);
        i += length - 1;
        continue;
      }
      const made = thing(value.gear?.kind ?? 'load', i, i + length, value.name);
      made.appliance = value.appliance;
      made.gear = value.gear;
      if (value.appliance) state.cues.add('load');
      for (const cue of value.gear?.cues ?? []) state.cues.add(cue);
      state.things.push(made);
      markKnown(state, i, i + length);
      i += length - 1;
    } else {
      const named = cell(state, i) ?? unknownLoad(state, i);
      if (!named) continue;
      state.things.push(named);
      markKnown(state, named.at, named.end);
      i = named.end - 1;
    }
  }
  humidifiers(state);
}

/** "12 two volt cells": batteries of a big bank; without their volts, cells are anything. */
function cell(state: State, at: number): Thing | undefined {
  const volts = quantityAt(state, at - 1);
  if (!/^cells?$/.test(wordAt(state, at)) || volts?.unit.dimension !== 'voltage' || volts.value > mostCellV)
    return undefined;
  state.cues.add('battery');
  return thing('battery', at, at + 1, 'cell');
}

const mostCellV = 4;

const articles = list('to we i you dont can will lets gonna');

/** Words that are now a thing, now a doing: "to iron", "we shower", "the house we stay in". */
function isVerb(state: State, at: number, entry: Entry): boolean {
  const before = wordAt(state, at - 1);
  if (/^lights?$/.test(wordAt(state, at))) if (/^(til|till|until|first|day|dark)$/.test(before)) return true;
  if (entry.name === 'house')
    return !/^(is|has|s|bank|batt|gets|was|=|:)$/.test(textAt(state, at + 1)) && !quantityAt(state, at - 1);
  if (entry.name === 'starter' || entry.name === 'array') return false;
  // "the fridge draws 5 A when the compressor is on": a part of it.
  if (entry.name === 'compressor' && state.things.some(one => isAlwaysOn(one.appliance))) return true;
  return weakNames.has(entry.name) && articles.has(before);
}

/**
 * A load that no table names: the noun that a draw belongs to ("4A of stuff", "a 60 W doodad", "widget: 2A").
 * Only words that mean nothing else here.
 */
function unknownLoad(state: State, at: number): Thing | undefined {
  const quantity = quantityAt(state, at);
  if (!quantity) return undefined;
  const { dimension } = quantity.unit;
  if ((dimension !== 'current' && dimension !== 'power') || quantity.per === 'day') return undefined;
  let next = at + 1;
  while (
    /^(of|worth|rated|12v|little|small|big|old|new|constant|continuous|steady)$/.test(wordAt(state, next))
  )
    next++;
  const word = wordAt(state, next);
  if (word && (genericNouns.has(word) || (!isSpoken(word) && isNoun(word))) && !isThingSoon(state, next))
    return thing('load', next, next + 1, singular(word));
  // "My recorder, 0.25 A".
  const isApart = textAt(state, at - 1) === ',' && /^(a|the|my|our)$/.test(wordAt(state, at - 3));
  const last = isApart ? at - 2 : at - 1;
  const before = wordAt(state, last);
  const isNamed =
    before &&
    !isSpoken(before) &&
    !genericNouns.has(before) &&
    isNoun(before) &&
    !state.tokens[last]!.isKnown &&
    !thingBefore(state, last);
  // Taken only where the message is a list: the name opens its part of the sentence.
  const opener = textAt(state, last - 1);
  if (isNamed && (last === 0 || /^[,+;:&.\n]$|^(and|plus|n|a|the|my|our)$/.test(opener))) {
    return thing('load', last, last + 1, singular(before));
  }
  return undefined;
}

/** Words that mean something else here can't name a load. */
const spoken = new Set(plainWords);
cueLexicon.vocabulary(spoken);
for (const row of modifierRows)
  for (const phrase of row.phrases) for (const word of phrase.split(' ')) spoken.add(word);
const isSpoken = (word: string): boolean => spoken.has(word);

/** "25 A no-name charger": the thing itself comes a word or two later. */
function isThingSoon(state: State, at: number): boolean {
  for (let i = at; i < at + 4; i++) {
    if (state.tokens[i]?.kind !== 'word' || /^(for|on|off|and|with|from|to|in)$/.test(wordAt(state, i)))
      return false;
    if (thingLexicon.find(state, i)) return true;
  }
  return false;
}

const thingBefore = (state: State, at: number): boolean => {
  const last = state.things.at(-1);
  return last !== undefined && last.end > at;
};

const isNoun = (word: string): boolean =>
  word.length > 2 && word.length < 24 && !word.endsWith('ing') && !word.endsWith('ly');
const singular = (word: string): string =>
  word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;
