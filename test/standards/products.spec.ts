import { appendAudits, checkTicket, parseXml, readProduct, writeXml, type XmlDocument } from '#libs/jdf';
import { parsedXml } from '../kit/value-in.js';
import { samples, textOfSample } from './samples.js';
import { schemaFaults } from './xmllint.js';

function sample(path: string): XmlDocument {
  const found = samples().find((one) => one.path === `jdf/samples/${path}`);
  if (found === undefined) throw new Error(`No sample ${path}.`);
  return parsedXml(textOfSample(found));
}

describe("the standard's sample of a product ticket", () => {
  it('reads as the brochure that it is: 10,000 copies, 16 pages of 8.5 by 11 inches', () => {
    const product = readProduct(sample('lifecycle/ProductIntentNode.jdf'));
    expect(product).toMatchObject({
      ok: true,
      value: {
        jobId: { value: 'J1', line: 3, path: '/JDF' },
        descriptiveName: { value: 'Complete 16-page Brochure' },
        amount: { value: 10_000, path: '/JDF/ResourcePool/Component' },
        pages: { value: 16 },
        dimensionsMm: { value: { widthMm: expect.closeTo(215.9, 6), heightMm: expect.closeTo(279.4, 6) } },
        frontCoating: { value: 'None' },
        children: [],
      },
    });
    const value = product.ok ? product.value : undefined;
    expect([value?.bindingType, value?.inksFront, value?.weightGsm, value?.finishedDimensionsMm]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  it('reads the part of an intent that the link names', () => {
    const doc = sample('structure/resourceAuditLoggingChanges.jdf');
    // The sample states no amount; with one, its link selects the paper of 90 g/m².
    const text = writeXml(doc).replace('ComponentType="Sheet"', 'Amount="1" ComponentType="Sheet"');
    const again = parseXml(text);
    expect(again.ok && readProduct(again.value)).toMatchObject({ value: { weightGsm: { value: 90 } } });
  });

  it('stays valid and sound with audits appended', () => {
    const at = Date.UTC(2024, 6, 25, 10);
    const link = { rRef: 'Link0003', usage: 'Output', name: 'Component' } as const;
    const doc = appendAudits(sample('lifecycle/ProductIntentNode.jdf'), [
      { kind: 'Created', id: 'a0', timeStamp: at, agentName: 'Sidelay', agentVersion: '0.1.0' },
      {
        kind: 'PhaseTime',
        id: 'a1',
        timeStamp: at,
        start: at,
        end: at + 60_000,
        status: 'InProgress',
        statusDetails: 'Good',
        devices: [{ deviceId: 'press', deviceType: 'Press' }],
        employees: [{ personalId: 'p1' }],
        misDetails: [{ workType: 'Original' }],
        links: [
          {
            ...link,
            actualAmount: 120,
            partAmounts: [{ actualAmount: 120, parts: [{ Condition: 'Good' }] }],
          },
        ],
        // The product of the sample is in one piece: a part that needs no key of its resources.
        parts: [{ Condition: 'Good' }],
      },
      {
        kind: 'ProcessRun',
        id: 'a2',
        timeStamp: at,
        start: at,
        end: at + 60_000,
        endStatus: 'Completed',
        durationS: 60,
        submissionTime: at,
      },
      {
        kind: 'ResourceAudit',
        id: 'a3',
        timeStamp: at,
        reason: 'ProcessResult',
        nodeStatus: 'InProgress',
        links: [{ ...link, actualAmount: 10_020 }, link],
      },
      {
        kind: 'Notification',
        id: 'a4',
        timeStamp: at,
        class: 'Event',
        type: 'Barcode',
        jobId: 'J1',
        comment: 'Box 1.',
      },
    ]);
    expect(checkTicket(doc)).toEqual([]);
    expect(schemaFaults({ 'audited.jdf': writeXml(doc) })).toEqual({});
  });
});
