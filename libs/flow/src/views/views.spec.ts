import { aFile, aStep, decideOn } from '../../../../test/kit/a-file.js';
import { bookPhase } from '../decide/book-phase.js';
import { settleDelivery } from '../decide/deliver.js';
import { routeReadySteps } from '../decide/route.js';
import { eventTypes, type LoggedEvent } from '../state/event.js';
import { progressPct, sentenceOf, ticketView, waitsFor } from './index.js';

describe('progress', () => {
  it('is the planned seconds of finished work over all, a running step by its share', () => {
    const steps = [
      aStep('print', [], { setupS: 100, runS: 100, status: 'Completed' }),
      aStep('fold', [], { setupS: 0, runS: 200, outAmount: 100, good: 25, status: 'InProgress' }),
    ];
    expect(progressPct(steps)).toBe(62.5);
  });
});

describe('what a step waits for, in words', () => {
  it('names what is missing, the way to the device, the refusal', () => {
    const file = decideOn(aFile(), 0, routeReadySteps).file;
    expect(waitsFor(file, file.steps[1]!)).toBe('waits for print');
    expect(waitsFor(file, file.steps[0]!)).toBe('on its way to print-machine');
    const refused = decideOn(file, 0, (draft) =>
      settleDelivery(draft, 't-1', 1, { outcome: 'refused', reason: 'too thick' }),
    ).file;
    expect(waitsFor(refused, refused.steps[0]!)).toBe('refused by print-machine: too thick');
    const taken = decideOn(file, 0, (draft) =>
      settleDelivery(draft, 't-1', 1, { outcome: 'taken', deviceEntryId: 'q' }),
    ).file;
    expect(waitsFor(taken, taken.steps[0]!)).toBe('in the queue of print-machine');
  });
});

describe('a ticket as the outside sees it', () => {
  it('has its fields with times as RFC 3339', () => {
    const file = decideOn(aFile(), 0, (draft) => {
      routeReadySteps(draft);
      bookPhase(draft, {
        stepId: 'print',
        deviceId: 'print-machine',
        start: 1000,
        at: 1000,
        status: 'Setup',
        statusDetails: 'FormChange',
        good: 0,
        waste: 40,
        source: 'machine',
      });
    }).file;
    expect(ticketView(file)).toMatchObject({
      id: 'ticket-1',
      jobId: 'J1',
      status: 'InProgress',
      activation: 'Active',
      quantity: 300,
      priority: 50,
      revision: 1,
      steps: [
        {
          id: 'print',
          status: 'Setup',
          statusDetails: 'FormChange',
          device: 'print-machine',
          start: '1970-01-01T00:00:01.000Z',
          waste: 40,
          source: 'machine',
        },
        { id: 'fold', status: 'Waiting' },
      ],
    });
  });
});

describe('the story', () => {
  it('has a sentence for every kind of event, with no fact left unnamed', () => {
    for (const type of Object.keys(eventTypes) as LoggedEvent['type'][]) {
      const facts = {
        jobId: 'J1',
        name: 'N',
        intake: 'http',
        quantity: 1,
        steps: 1,
        reason: 'r',
        to: 'Completed',
        from: 'store',
        by: 'Ada',
        unit: 'sheets',
        good: 1,
        waste: 0,
        planned: 1,
        resource: 'print',
        amount: 1,
        item: 'i',
        inStore: 1,
        needed: 2,
        url: 'u',
        class: 'Warning',
        text: 't',
        factor: 1,
        deviceEntryId: 'q',
        againInS: 5,
        endStatus: 'Completed',
      };
      const sentence = sentenceOf({
        position: 1,
        type,
        time: 0,
        ticketId: 't',
        stepId: 'print',
        deviceId: 'press',
        data: facts,
      });
      expect(sentence).toMatch(/[.]$|: [rt]$/);
      expect(sentence).not.toContain('undefined');
    }
  });
});
