import { describe, expect, it } from 'vitest';
import type { Region } from '../../../../src/geometry/floorShape.ts';
import type { LaneJob } from '../../../../src/geometry/lanes/lane.ts';
import { lanePlan } from '../../../../src/geometry/lanes/lanePlan.ts';
import { rectangle, turned } from '../../../support/floors.ts';
import { mappedRegion } from '../../../support/fields.ts';

/** Worked by hand. 250 mm a second, 18 s a turn, a minute a move. */
const JOB: LaneJob = { usefulWidthMm: 500, speedMmPerS: 250, turnS: 18, moveS: 60 };

function planOf(field: Region, more: Partial<LaneJob> = {}) {
  const plan = lanePlan(field, { ...JOB, ...more });
  if (!plan) throw new Error('no lanes');
  return plan;
}

describe('lanes of a room without anything in it', () => {
  const room: Region = [[rectangle(1000, 2000, 10_000, 4500)]];

  it('run along its longer side: 9 lanes of 10 m, 8 turns', () => {
    const plan = planOf(room);
    expect(plan).toMatchObject({ directionRad: 0, lanes: 9, runs: 1, turns: 8, backingTurns: 0 });
    expect(plan.travelM).toBeCloseTo(90, 9);
    // 90 m / 0.25 m/s + 8 x 18 s + 60 s
    expect(plan.seconds).toBeCloseTo(360 + 144 + 60, 9);
  });

  it('would take 20 lanes of 4.5 m across', () => {
    const [along, across] = planOf(room).tried;
    expect(along).toMatchObject({ lanes: 9 });
    expect(across).toMatchObject({ lanes: 20, runs: 1, turns: 19 });
    expect(across?.seconds).toBeCloseTo(360 + 19 * 18 + 60, 9);
  });

  it('round up: a rest of 10 cm takes a lane as well, and all lanes lie a little closer', () => {
    const plan = planOf([[rectangle(0, 0, 10_000, 4600)]]);
    expect(plan.lanes).toBe(10);
    expect(plan.travelM).toBeCloseTo(100, 9);
  });

  it('go to and fro: each begins on the side where the one before ended', () => {
    const [run] = planOf(room).order;
    expect(run?.lanes[0]).toEqual([
      [1000, 2250],
      [11_000, 2250],
    ]);
    expect(run?.lanes[1]).toEqual([
      [11_000, 2750],
      [1000, 2750],
    ]);
  });

  it('begin where the machine comes from', () => {
    const [run] = planOf(room, { startAt: [11_200, 6600] }).order;
    expect(run?.lanes[0]?.[0]).toEqual([11_000, 6250]);
    expect(run?.lanes.at(-1)?.[1]).toEqual([1000, 2250]);
  });
});

describe('lanes round what stands in the way', () => {
  it('an L-shaped room is one run: no lane meets two', () => {
    const field: Region = [
      [
        [
          [0, 0],
          [10_000, 0],
          [10_000, 4000],
          [5000, 4000],
          [5000, 8000],
          [0, 8000],
        ],
      ],
    ];
    const along = planOf(field, { directions: [0] });
    expect(along).toMatchObject({ lanes: 16, runs: 1, turns: 15 });
    expect(along.travelM).toBeCloseTo(120, 9);
  });

  it('a column makes four runs: before it, beside it twice, behind it', () => {
    const field: Region = [[rectangle(0, 0, 10_000, 5000), rectangle(4500, 2000, 1000, 1000)]];
    const plan = planOf(field, { directions: [0] });
    expect(plan).toMatchObject({ lanes: 12, runs: 4, turns: 8 });
    expect(plan.travelM).toBeCloseTo(98, 9);
    expect(plan.order.map(({ lanes }) => lanes.length).toSorted((a, b) => a - b)).toEqual([2, 2, 4, 4]);
  });

  it('two rooms are two runs however near they lie, each with lanes of its own', () => {
    const field: Region = [[rectangle(0, 0, 6000, 2300)], [rectangle(0, 2310, 6000, 2000)]];
    const plan = planOf(field, { directions: [0] });
    expect(plan).toMatchObject({ lanes: 5 + 4, runs: 2, turns: 7 });
  });

  it('runs come in the order of a short way, and the way between them is that of the order', () => {
    const rooms = [3, 0, 4, 1, 2].map((i) => [rectangle(i * 5000, 0, 4000, 1000)]);
    const plan = planOf(rooms, { directions: [0], startAt: [0, 250] });
    // Two lanes each: in and out on the left. From one room to the next: 5 m and the lane of 0.5 m between.
    expect(plan.order.map(({ lanes }) => Math.floor((lanes[0]?.[0][0] ?? 0) / 5000))).toEqual([0, 1, 2, 3, 4]);
    expect(plan.betweenM).toBeCloseTo(4 * 5, 9);
  });
});

describe('where the machine cannot turn', () => {
  const corridor = [rectangle(0, 0, 10_000, 1400)];
  const hall = [rectangle(0, 3000, 10_000, 5000)];

  it('every lane is backed out of, and its turns cost double', () => {
    const free = planOf([corridor]);
    const backing = planOf([corridor], { turningRadiusMm: 800 });
    expect(free.backingTurns).toBe(0);
    expect(backing).toMatchObject({ turns: 2, backingTurns: 2 });
    expect(backing.seconds - free.seconds).toBeCloseTo(2 * 18, 9);
    expect(backing.order[0]?.backsOut).toBe(true);
  });

  it('a circle that just fits turns', () => {
    expect(planOf([corridor], { turningRadiusMm: 690 }).backingTurns).toBe(0);
    expect(planOf([corridor], { turningRadiusMm: 701 }).backingTurns).toBe(2);
  });

  it('is asked of each piece', () => {
    const plan = planOf([corridor, hall], { turningRadiusMm: 1500, directions: [0] });
    expect(plan).toMatchObject({ turns: 2 + 9, backingTurns: 2 });
    expect(plan.order.map(({ backsOut }) => backsOut).toSorted((a, b) => Number(a) - Number(b))).toEqual([false, true]);
  });

  it('columns in the way of the circle count', () => {
    const columns = [2000, 4000, 6000, 8000].map((x) => rectangle(x - 150, 5350, 300, 300));
    expect(planOf([[...hall, ...columns]], { turningRadiusMm: 2450 }).backingTurns).toBeGreaterThan(0);
    expect(planOf([hall], { turningRadiusMm: 2450 }).backingTurns).toBe(0);
  });
});

describe('directions', () => {
  it('are those of the walls, the longest first, each with its right angle', () => {
    const room: Region = [[rectangle(0, 0, 10_000, 4000), rectangle(3000, 1500, 600, 600)]];
    const leaning = mappedRegion(room, (at) => turned(at, 0.3));
    expect(planOf(room).tried.map(({ directionRad }) => directionRad)).toEqual([0, Math.PI / 2]);
    const [along, across] = planOf(leaning).tried;
    expect(along?.directionRad).toBeCloseTo(0.3, 9);
    expect(across?.directionRad).toBeCloseTo(0.3 + Math.PI / 2, 9);
  });

  it('a slanted wall adds its own', () => {
    const field: Region = [
      [
        [
          [0, 0],
          [12_000, 0],
          [12_000, 5000],
          [9000, 8000],
          [0, 8000],
        ],
      ],
    ];
    const degrees = planOf(field).tried.map(({ directionRad }) => Math.round((directionRad * 180) / Math.PI));
    expect(degrees).toEqual([0, 90, 45, 135]);
  });

  it('are twelve at most', () => {
    const many = Array.from({ length: 10 }, (_, i) =>
      mappedRegion([[rectangle(i * 20_000, 0, 8000 + i * 100, 3000)]], ([x, y]) => {
        const [dx, dy] = turned([x - i * 20_000, y], i * 0.13);
        return [dx + i * 20_000, dy];
      }),
    ).flat();
    expect(planOf(many).tried).toHaveLength(12);
  });

  it('of a round room are those of its edges', () => {
    const round = Array.from({ length: 256 }, (_, i) => turned([2000, 0], (i * Math.PI) / 128));
    const plan = planOf([[round]]);
    expect(plan.tried.length).toBeGreaterThanOrEqual(2);
    expect(plan.lanes).toBe(8);
  });

  it('a turned room has the same lanes', () => {
    const room: Region = [[rectangle(0, 0, 9000, 5200), rectangle(3000, 2000, 800, 800)]];
    const straight = planOf(room);
    for (const angle of [0.2, 1, 2.5, -0.7]) {
      const { lanes, runs, travelM, seconds } = planOf(mappedRegion(room, (at) => turned(at, angle)));
      expect({ lanes, runs }).toEqual({ lanes: straight.lanes, runs: straight.runs });
      expect(travelM).toBeCloseTo(straight.travelM, 6);
      expect(seconds).toBeCloseTo(straight.seconds, 6);
    }
  });
});

describe('nothing to drive', () => {
  const room: Region = [[rectangle(0, 0, 4000, 3000)]];

  it('is answered for no field and for what is no job', () => {
    expect(lanePlan([], JOB)).toBeNull();
    expect(lanePlan([[]], JOB)).toBeNull();
    expect(lanePlan([[[]]], JOB)).toBeNull();
    for (const wrong of [
      { usefulWidthMm: 0 },
      { usefulWidthMm: Number.NaN },
      { speedMmPerS: 0 },
      { turnS: Infinity },
      { directions: [Number.NaN] },
      { directions: [] },
    ]) {
      expect(lanePlan(room, { ...JOB, ...wrong }), JSON.stringify(wrong)).toBeNull();
    }
  });

  it('is answered for a sliver that nobody drives a machine to, and for points that are no numbers', () => {
    expect(lanePlan([[rectangle(0, 0, 4000, 2)]], JOB)).toBeNull();
    expect(lanePlan([[[...rectangle(0, 0, 4000, 3000), [Number.NaN, 0]]]], JOB)).toBeNull();
  });

  it('a useful width that would need lanes without number is no job', () => {
    expect(lanePlan([[rectangle(0, 0, 1e8, 1e5)]], { ...JOB, usefulWidthMm: 10 })).toBeNull();
  });
});
