import { describe, expect, it } from 'vitest';
import { feetAndInches, lengthForField, showFineSize, showLength, showSize } from '../../../src/model/showLength.ts';
import {
  figureText,
  showArea,
  showHours,
  showMass,
  showNumber,
  showRun,
  showVolume,
} from '../../../src/model/showNumber.ts';

describe('lengths', () => {
  it('shows feet and inches to 1/8 with a slash', () => {
    expect(showLength(3822.7, 'imperial')).toEqual({ figure: `12' 6 1/2"`, unit: '' });
    expect(feetAndInches(304.8)).toBe("1'");
    expect(feetAndInches(165.1)).toBe(`6 1/2"`);
    expect(feetAndInches(0)).toBe(`0"`);
    expect(feetAndInches(-12.7)).toBe(`-1/2"`);
    expect(feetAndInches(400_000)).toBe(`1,312' 4"`);
  });
  it('carries to the next foot when rounding fills it', () => {
    expect(feetAndInches(304.8 - 0.5)).toBe("1'");
    expect(feetAndInches(2 * 304.8 - 1.2)).toBe("2'");
  });
  it('reads closer in sixteenths', () => {
    expect(showLength(3822.7 + 25.4 / 16, 'imperial', 16).figure).toBe(`12' 6 9/16"`);
  });
  it('shows metres to 0.01', () => {
    expect(showLength(3810, 'metric')).toEqual({ figure: '3.81', unit: 'm' });
    expect(figureText(showLength(1_234_567, 'metric'))).toBe('1,234.57 m');
    expect(showLength(-0.001, 'metric').figure).toBe('0.00');
  });
  it('shows small sizes in mm or inches', () => {
    expect(showSize(125, 'metric')).toEqual({ figure: '125', unit: 'mm' });
    expect(showSize(127, 'imperial')).toEqual({ figure: '5', unit: 'in' });
    expect(showFineSize(0.3, 'metric')).toEqual({ figure: '0.3', unit: 'mm' });
    expect(showFineSize(0.3, 'imperial')).toEqual({ figure: '0.01', unit: 'in' });
  });
  it('puts back into the field what was typed there', () => {
    expect(lengthForField(3822.7, 'ft')).toBe(`12' 6 1/2"`);
    expect(lengthForField(400_000, 'ft')).toBe(`1312' 4 1/16"`);
    expect(lengthForField(3810, 'm')).toBe('3.81');
    expect(lengthForField(3000, 'mm')).toBe('3000');
    expect(lengthForField(165.1, 'in')).toBe('6 1/2');
    // A crack by its gauge: 0.020 in is no fraction, and not nothing.
    expect(lengthForField(0.508, 'in')).toBe('0.02');
    expect(lengthForField(0.79375, 'in')).toBe('1/32');
  });
});

describe('areas, runs, hours, volumes, masses', () => {
  it('shows m2 to 0.01, ft2 to 1, and to 0.1 under 100', () => {
    expect(showArea(377.9, 'metric')).toEqual({ figure: '377.90', unit: 'm2' });
    expect(showArea(377.9, 'imperial')).toEqual({ figure: '4,068', unit: 'ft2' });
    expect(showArea(2.46, 'imperial')).toEqual({ figure: '26.5', unit: 'ft2' });
    expect(showArea(9.29, 'imperial').figure).toBe('100');
  });
  it('shows the rest', () => {
    expect(showRun(20.62, 'metric')).toEqual({ figure: '20.62', unit: 'm' });
    expect(showRun(3.048, 'imperial')).toEqual({ figure: '10.0', unit: 'ft' });
    expect(showHours(12.449)).toEqual({ figure: '12.4', unit: 'h' });
    expect(showVolume(0.6, 'metric')).toEqual({ figure: '600', unit: 'mL' });
    expect(showVolume(3.785411784, 'imperial')).toEqual({ figure: '1.0', unit: 'gal' });
    expect(showMass(45.359237, 'imperial')).toEqual({ figure: '100', unit: 'lb' });
    expect(showNumber(-0.001, 2)).toBe('0.00');
  });
});
