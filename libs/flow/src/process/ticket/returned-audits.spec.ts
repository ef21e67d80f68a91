import { type Audit, appendAudits, readProcessNode, writeXml } from '#libs/jdf';
import { bookletPlan } from '../../../../../test/kit/booklet-plan.js';
import { MONDAY, ticketFile } from '../../../../../test/kit/ticket-files.js';
import { parsedXml, valueIn } from '../../../../../test/kit/value-in.js';
import { processTicket } from '../index.js';
import { returnedAudits } from './returned-audits.js';

const options = { now: MONDAY, jmfUrl: 'http://127.0.0.1:7420/jmf', senderId: 'sidelay' };

/** The press's ticket with audits appended as a device does. */
function returned(audits: (id: (name: string) => string) => readonly Audit[]): string {
  const sent = valueIn(processTicket(ticketFile(bookletPlan(), 'planned'), null, 'print-1', options));
  const doc = parsedXml(sent);
  const node = valueIn(readProcessNode(doc));
  const linked = [...node.outputs, ...node.inputs];
  const idOf = (name: string): string => linked.find((one) => one.name === name)!.id;
  return writeXml(appendAudits(doc, audits(idOf)));
}

function read(text: string) {
  return valueIn(returnedAudits(text));
}

const stamp = { timeStamp: MONDAY + 100_000 };

describe('what a returned ticket says', () => {
  it('is whose it is and how it ended', () => {
    const text = returned(() => [
      { kind: 'ProcessRun', ...stamp, start: MONDAY, end: MONDAY + 90_000, endStatus: 'Completed' },
    ]);
    expect(read(text)).toMatchObject({
      jobId: 'J-300',
      jobPartId: 'print-1',
      endStatus: 'Completed',
      end: MONDAY + 90_000,
      phases: [],
      uses: [],
    });
  });

  it('is its phases with their good and waste', () => {
    const text = returned((id) => [
      {
        kind: 'PhaseTime',
        ...stamp,
        start: MONDAY,
        end: MONDAY + 60_000,
        status: 'Setup',
        statusDetails: 'FormChange',
      },
      {
        kind: 'PhaseTime',
        ...stamp,
        start: MONDAY + 60_000,
        end: MONDAY + 90_000,
        status: 'InProgress',
        links: [
          {
            name: 'Component',
            rRef: id('Component'),
            usage: 'Output',
            partAmounts: [
              { actualAmount: 300, parts: [{ Condition: 'Good' }] },
              { actualAmount: 4, parts: [{ Condition: 'WasteMakeReady' }] },
              { actualAmount: 2, parts: [{ Condition: 'Waste' }] },
            ],
          },
        ],
      },
    ]);
    expect(read(text).phases).toEqual([
      {
        start: MONDAY,
        end: MONDAY + 60_000,
        status: 'Setup',
        statusDetails: 'FormChange',
        good: undefined,
        waste: undefined,
      },
      {
        start: MONDAY + 60_000,
        end: MONDAY + 90_000,
        status: 'InProgress',
        statusDetails: undefined,
        good: 300,
        waste: 6,
      },
    ]);
  });

  it('is what was used, by the first link of each audit, inks apart', () => {
    const text = returned((id) => [
      {
        kind: 'ResourceAudit',
        ...stamp,
        links: [
          {
            name: 'Media',
            rRef: id('Media'),
            usage: 'Input',
            partAmounts: [
              { actualAmount: 310, parts: [{ Condition: 'Good' }] },
              { actualAmount: 130, parts: [{ Condition: 'Waste' }] },
            ],
          },
          { name: 'Media', rRef: id('Media'), usage: 'Input', amount: 436 },
        ],
      },
      {
        kind: 'ResourceAudit',
        ...stamp,
        links: [
          {
            name: 'Ink',
            rRef: id('Ink'),
            usage: 'Input',
            partAmounts: [
              { actualAmount: 0.31, parts: [{ Separation: 'Cyan' }] },
              { actualAmount: 0.42, parts: [{ Separation: 'Black' }] },
            ],
          },
        ],
      },
    ]);
    expect(read(text).uses).toEqual([
      {
        name: 'Media',
        mediaType: 'Paper',
        productId: 'silk-115',
        separation: undefined,
        actual: 440,
        waste: 130,
      },
      {
        name: 'Ink',
        mediaType: undefined,
        productId: undefined,
        separation: 'Cyan',
        actual: 0.31,
        waste: undefined,
      },
      {
        name: 'Ink',
        mediaType: undefined,
        productId: undefined,
        separation: 'Black',
        actual: 0.42,
        waste: undefined,
      },
    ]);
  });

  it('is ink in kilograms where the ticket has it in grams', () => {
    const text = returned((id) => [
      {
        kind: 'ResourceAudit',
        ...stamp,
        links: [
          {
            name: 'Ink',
            rRef: id('Ink'),
            usage: 'Input',
            actualAmount: 310,
            parts: [{ Separation: 'Cyan' }],
          },
        ],
      },
    ]).replace('Unit="kg"', 'Unit="g"');
    expect(read(text).uses).toMatchObject([{ separation: 'Cyan', actual: 0.31 }]);
  });

  it('cannot be read from a message, or from what is no XML', () => {
    const message =
      '<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="s" TimeStamp="2026-03-02T07:00:00Z" Version="1.9"/>';
    expect(returnedAudits(message)).toMatchObject({ ok: false, problems: [{ code: 'KIND_UNKNOWN' }] });
    expect(returnedAudits('done')).toMatchObject({ ok: false });
  });
});
