/** What the usual sentences depend on. */
interface Facts {
  readonly hardness: readonly ('soft' | 'medium' | 'hard' | 'veryHard')[];
  readonly layers: number;
  readonly units: 'metric' | 'imperial';
  readonly ownPower: boolean;
  readonly visits: number;
  readonly atNight: boolean;
  readonly movesGoods: boolean;
  readonly leftOut: readonly string[];
}

const hardnessWords = { soft: 'soft', medium: 'medium', hard: 'hard', veryHard: 'very hard' } as const;

/** What a price usually rests on, sentence by sentence, for a customer to read; each may be changed. */
export function usualAssumptions(facts: Facts): string[] {
  const hard = facts.hardness.map((one) => hardnessWords[one]).join(' and ');
  const visits = facts.visits === 1 ? 'one visit' : `${String(facts.visits)} visits`;
  return [
    'The price is for the areas marked on the plan.',
    coatingWords(facts.layers),
    `The concrete is of ${hard} hardness.`,
    facts.movesGoods ? 'We move light goods; the floor is clear of everything else.' : 'The floor is clear.',
    facts.ownPower
      ? 'We bring our own power.'
      : `Power is within ${facts.units === 'metric' ? '30 m' : '100 ft'} of the work.`,
    'Heat and light are by others.',
    `The work is done in ${visits}, ${facts.atNight ? 'at night where it says so' : 'in normal hours'}.`,
    'There is no asbestos or lead work. If we find any, we stop and tell you.',
    'Moving joints are kept.',
    'We bring the surface to the stated profile; the layer of the topping checks and releases it before priming.',
    'Moisture in the slab, its movement and hidden damage are not ours.',
  ];
}

function coatingWords(layers: number): string {
  if (layers === 0) return 'There is no coating on the floor but what is marked.';
  return layers === 1 ? 'One coating layer comes off.' : `${String(layers)} coating layers come off.`;
}

/** What a price usually leaves out. */
export function usualExclusions(facts: Facts): string[] {
  return [
    ...facts.leftOut.map((floor) => `${floor}: nothing is drawn there`),
    'Abatement of asbestos and lead',
    'Structural repair',
    'Moisture control',
    'Levelling',
    'Cove base',
    'Patching of walls',
    'Disposal of regulated waste',
    ...(facts.movesGoods ? [] : ['Removal of goods']),
    'Electrician',
    'Parking fees',
    ...(facts.atNight ? [] : ['Work out of hours']),
  ];
}
