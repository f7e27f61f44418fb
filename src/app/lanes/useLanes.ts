import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { LanePlan } from '../../geometry/lanes/lane.ts';
import type { LanesShown } from '../../canvas/paint/lanes.ts';
import { recordOf } from '../../model/doc.ts';
import { laneAsks, laneHours, type LaneAsk } from '../../takeoff/laneHours.ts';
import type { Line } from '../../takeoff/line.ts';
import type { ZoneId } from '../../takeoff/prep.ts';
import { zoneKey } from '../prep/zoneNames.ts';
import { useDoc, useSettled, useTakeoff } from '../plan.ts';
import { useSession } from '../session.ts';
import { lanesFoundSoFar, lanesKnown, onLanesFound, wantLanes } from './workOutLanes.ts';
import { useLanesOn } from './lanesOn.ts';

/** A pass of a machine and its lanes; null: nothing to drive. */
export interface PassLanes {
  readonly ask: LaneAsk;
  readonly plan: LanePlan | null;
}

interface ZoneLanes {
  readonly passes: readonly PassLanes[];
  /** Newer ones are on their way. */
  readonly stale: boolean;
}

const NONE: readonly PassLanes[] = [];

/** Lanes of a zone's passes for the plan as it stands; the ones before stay until the newer are there. Null asks for nothing. */
export function useZoneLanes(zone: ZoneId | null): ZoneLanes {
  const doc = useDoc((now) => now);
  const { takeoff } = useSettled();
  const found = useSyncExternalStore(onLanesFound, lanesFoundSoFar);
  const asks = useMemo(() => (takeoff && zone ? laneAsks(doc, takeoff, zone) : []), [doc, takeoff, zone]);
  useEffect(() => wantLanes(asks), [asks]);
  const [last, setLast] = useState({ zone, passes: NONE });
  const now = useMemo(() => {
    const passes = asks.flatMap((ask): PassLanes[] => {
      const plan = lanesKnown(ask.field, ask.job);
      return plan === undefined ? [] : [{ ask, plan }];
    });
    return passes.length === asks.length ? { zone, passes } : null;
    // What is known grows with `found`.
    // oxlint-disable-next-line react-hooks/exhaustive-deps
  }, [asks, zone, found]);
  if (now && now.passes !== last.passes && (now.passes.length > 0 || last.passes.length > 0)) setLast(now);
  return {
    passes: now?.passes ?? (last.zone === zone ? last.passes : NONE),
    stale: now === null || (zone !== null && !takeoff),
  };
}

/** The lanes behind a line of machine hours and the hours they come to, for the second opinion; null while there are none. */
export function useLaneOpinion(line: Line): Line | null {
  const doc = useDoc((now) => now);
  const { takeoff } = useSettled();
  const { passes } = useZoneLanes(line.code === 'hours.machine' ? line.zone : null);
  const pass = passes.find(({ ask }) => ask.hours === line.key);
  return takeoff && pass?.plan ? laneHours(doc, takeoff, pass.ask, pass.plan) : null;
}

/** What Prep draws of the picked zone while Lanes is on: one plan a machine, that of its first pass. */
export function useLanesShown(): LanesShown | null {
  const isWanted = useLanesOn((now) => now.on);
  const stage = useSession((now) => now.stage);
  const isOn = isWanted && stage === 'prep';
  const picked = useSession((now) => now.picked);
  const zone = useDoc((doc) => picked.map((id) => recordOf(doc, 'zone', id)).find((each) => each !== null) ?? null);
  const { passes, stale } = useZoneLanes(isOn && zone ? zoneKey(zone) : null);
  const { preview } = useTakeoff();
  return useMemo(() => {
    if (!isOn || !zone) return null;
    const first = passes.filter(({ ask }, i) => passes.findIndex((other) => other.ask.field === ask.field) === i);
    const plans = first.flatMap(({ plan }) => plan ?? []);
    return plans.length > 0 ? { zone: zone.id, plans, isOld: stale || preview } : null;
  }, [isOn, zone, passes, stale, preview]);
}
