import type { Facts } from '#rig/rig.ts';
import type { Values } from '../assumption.ts';
import { likelyOf } from '../explore.ts';
import { type FuseSource, fuseTypeFor } from './breaking.ts';
import { choosePair } from './choose.ts';
import {
  type Circuit,
  type CircuitKind,
  type Currents,
  circuitAssumptions,
  circuitCurrents,
  circuitUseOf,
} from './circuit.ts';
import { conductorAssumptions } from './conductor.ts';
import { fuseFor } from './fuse.ts';
import { panelFuse } from './fuse-kinds.ts';
import { type LeadName, usualLengthM } from './sketch-table.ts';
import { surroundingAssumptions } from './surroundings.ts';
import { type CircuitUse, dropLimits } from './tables.ts';

/** A run of cable chosen with its fuse. */
export interface SketchLead {
  readonly name: LeadName;
  /** That flows for long, A. */
  readonly currentA: number;
  /** One way, m: as is usual. */
  readonly lengthM: number;
  readonly areaMm2: number;
  readonly fuseA: number;
  /** By its name in the trade. */
  readonly fuseKind: string;
  /** Not even the thickest cable or the largest fuse sold carries that. */
  readonly isTooMuch: boolean;
}

/** What all leads of a rig share. */
export interface Hub {
  readonly facts: Facts;
  /** Nominal, V. */
  readonly voltageV: number;
  readonly mainsV?: number;
  /** The bank, as a fuse sees it. */
  readonly source: FuseSource;
}

/** What flows in a lead, A, what its drop is a share of, V, and what its fuse sits on. */
export interface Flow {
  readonly currentA: number;
  readonly continuousA?: number;
  readonly ofV?: number;
  readonly use?: CircuitUse;
  readonly on?: FuseSource;
}

/** A lead of the usual length for what flows in it, its fuse and cable chosen for each other. */
export function leadOf(hub: Hub, name: LeadName, flow: Flow): SketchLead {
  const { currentA, continuousA = currentA, ofV = hub.voltageV, use = 'critical', on = hub.source } = flow;
  const { ambientC } = hub.facts;
  const lies = [...conductorAssumptions(undefined, ambientC), ...surroundingAssumptions(ambientC)];
  const values = {
    dropLimit: dropLimits[use].value,
    ...likelyOf(lies),
  };
  const lengthM = usualLengthM[name];
  const pair = choosePair({ lengthM, currentA, continuousA, voltageV: ofV }, 'metric', values);
  const type = fuseTypeFor(pair.fuse.ratingA, on);
  const kind = name === 'panels' ? panelFuse : name === 'main' ? (type.behind ?? type.kind) : type.kind;
  return {
    name,
    currentA: continuousA,
    lengthM,
    areaMm2: pair.conductor.areaMm2,
    fuseA: pair.fuse.ratingA,
    fuseKind: kind.name,
    isTooMuch: pair.isTooMuch || pair.fuse.ratingA < fuseFor(continuousA).ratingA,
  };
}

/** A circuit of a rig, with what is likely of what nobody told. */
export function circuitOn(
  { voltageV, mainsV }: Hub,
  kind: CircuitKind,
  facts: Facts,
): { readonly circuit: Circuit; readonly values: Values } {
  const circuit: Circuit = { kind, use: circuitUseOf(kind, facts), facts, voltageV, mainsV };
  return { circuit, values: likelyOf(circuitAssumptions(circuit)) };
}

/** Its currents, A. */
export function currentsOn(hub: Hub, kind: CircuitKind, facts: Facts): Currents {
  const { circuit, values } = circuitOn(hub, kind, facts);
  return circuitCurrents(circuit, values);
}
