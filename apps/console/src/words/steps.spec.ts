import type { Step, Ticket } from '../server/shapes.js';
import { chiefProcess, detailWords, frontWaiting, stepWord, stepWords, ticketStatus } from './steps.js';

const step = (id: string, more: Partial<Step> = {}): Step =>
  ({ id, types: [], status: 'Waiting', activation: 'Active', after: [], waitsFor: 'waits', ...more }) as Step;
const ticket = (steps: readonly Step[], more: Partial<Ticket> = {}): Ticket =>
  ({ status: 'InProgress', activation: 'Active', steps, ...more }) as Ticket;

// Process names: those of the open standard, as in the contract's plan document.
describe('words for steps', () => {
  it('call a combined step by its last process, a stitcher by its stitching', () => {
    expect(stepWord({ types: ['Stripping', 'Imposition', 'RIPing', 'ImageSetting'] })).toBe('Plates');
    expect(stepWord({ types: ['Collecting', 'Stitching', 'Trimming'] })).toBe('Stitch');
    expect(stepWord({ types: ['Imposition', 'Interpreting', 'Rendering', 'Screening'] })).toBe('RIP');
    expect(chiefProcess([])).toBe('');
  });

  it('tell all processes in order, and keep the name of one they do not know', () => {
    expect(stepWords({ types: ['Cutting', 'Shrinking'] })).toBe('Cut, Shrinking');
  });
});

describe('details of a status', () => {
  it('have words where we know them and stand as they were sent where not', () => {
    expect(['PaperJam', 'OddNoise', null].map(detailWords)).toEqual(['paper jam', 'OddNoise', '']);
  });
});

describe('status of a job', () => {
  it('is that of the step at work, before any that waits', () => {
    expect(ticketStatus(ticket([step('a', { status: 'Setup' }), step('b', { status: 'InProgress' })]))).toBe(
      'InProgress',
    );
    expect(ticketStatus(ticket([step('a', { status: 'Completed' }), step('b')]))).toBe('Waiting');
  });

  it('is held when the ticket is, or when all that could begin is', () => {
    expect(ticketStatus(ticket([step('a')], { activation: 'Held' }))).toBe('Held');
    expect(ticketStatus(ticket([step('a', { activation: 'Held' })]))).toBe('Held');
    expect(ticketStatus(ticket([step('a', { activation: 'Held' }), step('b')]))).toBe('Waiting');
  });

  it('is final once the ticket is', () => {
    expect(ticketStatus(ticket([step('a')], { status: 'Aborted', activation: 'Held' }))).toBe('Aborted');
  });

  it('counts as waiting at the front only what has all before it done', () => {
    const steps = [
      step('a', { status: 'Completed', waitsFor: null }),
      step('b', { after: ['a'] }),
      step('c', { after: ['b'] }),
    ];
    expect(frontWaiting(ticket(steps)).map(({ id }) => id)).toEqual(['b']);
  });
});
