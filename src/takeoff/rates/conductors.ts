import type { Sourced } from './rateRow.ts';

/** A copper conductor: resistance of one way, for the voltage drop of a run and its extension cord. */
export interface ConductorRow extends Sourced {
  readonly size: string;
  readonly ohmPerKm: number;
  readonly ohmPerKft: number;
  readonly areaMm2: number;
}

/** Voltage drop is two ways of a single phase. An electrician decides: this only says when to ask. */
export const conductors: readonly ConductorRow[] = [
  {
    size: '14 AWG',
    ohmPerKm: 10.072,
    ohmPerKft: 3.07,
    areaMm2: 2.08,
    source: 'NEC-9-8',
    provenance: 'R2',
    fromMemory: false,
  },
  {
    size: '12 AWG',
    ohmPerKm: 6.332,
    ohmPerKft: 1.93,
    areaMm2: 3.31,
    source: 'NEC-9-8',
    provenance: 'R2',
    fromMemory: false,
  },
  {
    size: '10 AWG',
    ohmPerKm: 3.97,
    ohmPerKft: 1.21,
    areaMm2: 5.26,
    source: 'NEC-9-8',
    provenance: 'R2',
    fromMemory: false,
  },
  {
    size: '8 AWG',
    ohmPerKm: 2.507,
    ohmPerKft: 0.764,
    areaMm2: 8.37,
    source: 'NEC-9-8',
    provenance: 'R2',
    fromMemory: false,
  },
  {
    size: '6 AWG',
    ohmPerKm: 1.611,
    ohmPerKft: 0.491,
    areaMm2: 13.3,
    source: 'NEC-9-8',
    provenance: 'R2',
    fromMemory: false,
  },
  {
    size: '4 AWG',
    ohmPerKm: 1.01,
    ohmPerKft: 0.308,
    areaMm2: 21.2,
    source: 'NEC-9-8',
    provenance: 'R2',
    fromMemory: false,
  },
  {
    size: '2 AWG',
    ohmPerKm: 0.636,
    ohmPerKft: 0.194,
    areaMm2: 33.6,
    source: 'NEC-9-8',
    provenance: 'R2',
    fromMemory: false,
  },
  {
    size: '1.5 mm2',
    ohmPerKm: 15,
    ohmPerKft: 4.57,
    areaMm2: 1.5,
    source: '22.5 ohm mm2/km at about 70 C',
    provenance: 'M',
    fromMemory: true,
  },
  {
    size: '2.5 mm2',
    ohmPerKm: 9,
    ohmPerKft: 2.74,
    areaMm2: 2.5,
    source: '22.5 ohm mm2/km at about 70 C',
    provenance: 'M',
    fromMemory: true,
  },
  {
    size: '4 mm2',
    ohmPerKm: 5.625,
    ohmPerKft: 1.71,
    areaMm2: 4,
    source: '22.5 ohm mm2/km at about 70 C',
    provenance: 'M',
    fromMemory: true,
  },
  {
    size: '6 mm2',
    ohmPerKm: 3.75,
    ohmPerKft: 1.14,
    areaMm2: 6,
    source: '22.5 ohm mm2/km at about 70 C',
    provenance: 'M',
    fromMemory: true,
  },
  {
    size: '10 mm2',
    ohmPerKm: 2.25,
    ohmPerKft: 0.69,
    areaMm2: 10,
    source: '22.5 ohm mm2/km at about 70 C',
    provenance: 'M',
    fromMemory: true,
  },
];
