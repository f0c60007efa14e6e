import { describe, expect, it } from 'vitest';
import type { ReportElement } from '../notice-files/safety-gate-report.js';
import { latestReports } from './weekly-reports.js';

const leaf = (name: string, text: string): ReportElement => ({
  name,
  text,
  attributes: new Map(),
  elements: [],
});
const element = (name: string, elements: ReportElement[]): ReportElement => ({
  name,
  elements,
  attributes: new Map(),
  text: '',
});
const entry = (reference: string, url: string) =>
  element('weeklyReport', [leaf('reference', reference), leaf('URL', url)]);
const list = 'https://gate.example/list/xml/en';

describe('a list of weekly reports', () => {
  it('leads to the latest four, whatever their order', () => {
    const weeks = ['2026-9', '2025-52', '2026-27', '2026-26', '2026-10', '2026-27'];
    const root = element(
      'weeklyReports',
      weeks.map((week) => entry(`Report-${week}`, `\n/detail/${week}\n`)),
    );
    expect(latestReports(root, list)).toEqual(
      ['2026-27', '2026-26', '2026-10', '2026-9'].map((week) => `https://gate.example/detail/${week}`),
    );
  });

  it('leads to no other host, and to no other protocol', () => {
    const addresses = [
      'https://other.example/1',
      'http://gate.example/1',
      '//other.example/1',
      'file:///1',
      'https://',
      '',
    ];
    const root = element(
      'r',
      addresses.map((url, index) => entry(`Report-2026-${index + 1}`, url)),
    );
    expect(latestReports(root, list)).toEqual([]);
  });

  it('is none when it names no reports', () => {
    expect(latestReports(element('report', [leaf('reference', 'Report-2026-27')]), list)).toEqual([]);
    expect(latestReports(element('html', []), list)).toEqual([]);
  });
});
