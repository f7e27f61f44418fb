import type { Sourced } from './rateRow.ts';

/** A limit of a law, a directive or a rule: shown beside cautions, never worked with. Local code comes before it. */
export interface LimitRow extends Sourced {
  readonly id: string;
  readonly term: string;
  readonly value: number;
  readonly unit: string;
  /** Whose law or rule it is. */
  readonly where: string;
}

const read = (source: string): Sourced => ({ source, provenance: 'R', fromMemory: false });
const heard = (source: string): Sourced => ({ source, provenance: 'R2', fromMemory: false });
const remembered = (source: string): Sourced => ({ source, provenance: 'M', fromMemory: true });

function row(id: string, term: string, value: number, unit: string, where: string, from: Sourced): LimitRow {
  return { id, term, value, unit, where, ...from };
}

/** Not legal advice: local codes, the specification and licensed professionals govern. */
export const limits: readonly LimitRow[] = [
  row('silica_pel', 'Respirable crystalline silica PEL, 8 h TWA', 50, 'ug/m3', 'US', read('CFR1926.1153')),
  row('silica_al', 'Silica action level, 8 h TWA', 25, 'ug/m3', 'US', read('CFR1926.1153')),
  row('silica_rel', 'NIOSH recommended limit, silica', 50, 'ug/m3', 'US', remembered('NIOSH')),
  row('silica_wel', 'Silica WEL, 8 h TWA', 100, 'ug/m3', 'UK', heard('HSE-RCS')),
  row('silica_eu', 'Silica binding limit, 8 h TWA', 100, 'ug/m3', 'EU', remembered('Directive (EU) 2017/2398')),
  row('asbestos_pel', 'Asbestos PEL, 8 h', 0.1, 'f/cc', 'US', read('CFR1926.1101')),
  row('asbestos_el', 'Asbestos excursion, 30 min', 1, 'f/cc', 'US', read('CFR1926.1101')),
  row('acm_pct', 'Asbestos-containing if over', 1, '%', 'US', read('CFR1926.1101')),
  row(
    'acm_year',
    'Presume flooring and mastic asbestos if building no later than',
    1980,
    'year',
    'US',
    read('CFR1926.1101'),
  ),
  row('racm_area', 'NESHAP renovation threshold, area', 15, 'm2 (160 ft2)', 'US', read('CFR61.145')),
  row('racm_length', 'NESHAP threshold, pipe', 80, 'm (260 ft)', 'US', read('CFR61.145')),
  row('racm_volume', 'NESHAP threshold, volume', 1, 'm3 (35 ft3)', 'US', read('CFR61.145')),
  row('racm_notice', 'NESHAP notice before work', 10, 'working days', 'US', read('CFR61.145')),
  row('racm_dwellings', 'NESHAP leaves out residential buildings up to', 4, 'dwellings', 'US', read('CFR61.141')),
  row('ga_licence', 'State example: licensed contractor over', 10, 'ft2 or ft', 'US-GA', read('GAEPD-TILE')),
  row('npe_ach', 'Negative pressure enclosure, at least', 4, 'air changes/h', 'US', read('CFR1926.1101')),
  row('npe_dp', 'Negative pressure enclosure, at least', -0.02, 'in water', 'US', read('CFR1926.1101')),
  row('lead_pel', 'Lead PEL, 8 h', 50, 'ug/m3', 'US', read('CFR1926.62')),
  row('lead_al', 'Lead action level', 30, 'ug/m3', 'US', read('CFR1926.62')),
  row('rrp_year', 'Lead renovation rule, homes built before', 1978, 'year', 'US', heard('CFR745')),
  row('rrp_in', 'Lead rule minor work, interior, per room, up to', 6, 'ft2', 'US', heard('CFR745')),
  row('rrp_out', 'Lead rule minor work, exterior, up to', 20, 'ft2', 'US', heard('CFR745')),
  row('co_ceiling', 'CO NIOSH ceiling', 200, 'ppm', 'US', read('NIOSH-96-118')),
  row('co_idlh', 'CO immediately dangerous', 1200, 'ppm', 'US', read('NIOSH-96-118')),
  row('co_pel', 'CO PEL, 8 h', 50, 'ppm', 'US', remembered('29 CFR 1926.55')),
  row('hav_eav', 'Hand-arm vibration action value A(8)', 2.5, 'm/s2', 'EU', heard('EU-HAV')),
  row('hav_elv', 'Hand-arm vibration limit A(8)', 5, 'm/s2', 'EU', heard('EU-HAV')),
  row('noise_lav', 'Noise lower action, daily', 80, 'dBA', 'UK/EU', remembered('Directive 2003/10/EC')),
  row('noise_uav', 'Noise upper action, daily', 85, 'dBA', 'UK/EU', remembered('Directive 2003/10/EC')),
  row('noise_elv', 'Noise limit at the ear', 87, 'dBA', 'UK/EU', remembered('Directive 2003/10/EC')),
  row('corrosive', 'Slurry is corrosive hazardous waste at pH', 12.5, 'pH', 'US', heard('CFR261.22')),
  row('gfci', 'Ground-fault protection, temporary 120 V receptacles of', 20, 'A and 15 A', 'US', heard('CFR1926.404')),
  row('vdrop_branch', 'Voltage drop, branch, advised', 3, '%', 'US', remembered('NEC-9-8')),
  row('vdrop_total', 'Voltage drop, total, advised', 5, '%', 'US', remembered('NEC-9-8')),
  row(
    'dew_margin',
    'Surface above dew point, at least',
    3,
    'C (5 F)',
    'any',
    heard('dew point charts of the coating trade'),
  ),
];
