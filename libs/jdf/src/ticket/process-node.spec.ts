import { parsedXml } from '../../../../test/kit/value-in.js';
import { writeXml } from '../xml/index.js';
import { type Audit, appendAudits, readAudits, readProcessNode } from './index.js';

const STEP = `<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="root" JobID="J1" Type="Product" Status="Waiting" Version="1.9">
  <ResourcePool>
    <Component ID="sheets" Class="Quantity" Status="Unavailable" ComponentType="Sheet" PartIDKeys="SheetName">
      <Component SheetName="S1"/><Component SheetName="S2"/>
    </Component>
  </ResourcePool>
  <JDF ID="print" JobPartID="P2" Type="Combined" Types="ConventionalPrinting Varnishing" Status="Ready">
    <ResourcePool>
      <NodeInfo ID="ni" Class="Parameter" Status="Available" SetupDuration="PT20M" TotalDuration="PT1H30M" CleanupDuration="PT10M" JobPriority="60"/>
      <Media ID="paper" Class="Consumable" Status="Available" Amount="3000" Weight="90" MediaType="Paper"/>
      <ExposedMedia ID="plates" Class="Handling" Status="Available" PartIDKeys="SheetName Side Separation" Brand="P">
        <ExposedMedia SheetName="S1">
          <ExposedMedia Side="Front"><ExposedMedia Separation="Cyan"/><ExposedMedia Separation="Black"/></ExposedMedia>
          <ExposedMedia Side="Back"><ExposedMedia Separation="Black"/></ExposedMedia>
        </ExposedMedia>
        <ExposedMedia SheetName="S2"/>
      </ExposedMedia>
    </ResourcePool>
    <ResourceLinkPool>
      <NodeInfoLink rRef="ni" Usage="Input"/>
      <MediaLink rRef="paper" Usage="Input" Amount="2761" CombinedProcessIndex="0"/>
      <ExposedMediaLink rRef="plates" Usage="Input" ProcessUsage="Plate"><Part SheetName="S1"/></ExposedMediaLink>
      <ComponentLink rRef="sheets" Usage="Output"><AmountPool>
        <PartAmount Amount="2500"><Part SheetName="S1" Condition="Good"/></PartAmount>
      </AmountPool><Part SheetName="S1"/></ComponentLink>
    </ResourceLinkPool>
  </JDF>
</JDF>`;

describe('the step that a device is to do', () => {
  it('is read with its processes, times, amounts and the parts it uses', () => {
    const step = readProcessNode(parsedXml(STEP));
    expect(step).toMatchObject({
      ok: true,
      value: {
        id: 'print',
        jobId: 'J1',
        jobPartId: 'P2',
        types: ['ConventionalPrinting', 'Varnishing'],
        status: 'Ready',
        activation: 'Active',
        setupS: 1200,
        totalS: 5400,
        cleanupS: 600,
        runS: 3600,
        jobPriority: 60,
        inputs: [
          { name: 'NodeInfo' },
          { name: 'Media', amount: 2761, combinedProcessIndex: [0], status: 'Available' },
          {
            name: 'ExposedMedia',
            processUsage: 'Plate',
            leaves: [
              { SheetName: 'S1', Side: 'Front', Separation: 'Cyan' },
              { SheetName: 'S1', Side: 'Front', Separation: 'Black' },
              { SheetName: 'S1', Side: 'Back', Separation: 'Black' },
            ],
          },
        ],
        outputs: [
          {
            name: 'Component',
            parts: [{ SheetName: 'S1' }],
            partAmounts: [{ amount: 2500, parts: [{ SheetName: 'S1', Condition: 'Good' }] }],
          },
        ],
      },
    });
  });

  it('is the one asked for, or a refusal', () => {
    expect(readProcessNode(parsedXml(STEP), 'P2').ok).toBe(true);
    expect(readProcessNode(parsedXml(STEP), 'P3')).toMatchObject({
      problems: [{ code: 'JDF_STRUCTURE', path: '/JDF' }],
    });
  });

  it('is refused where a duration is none', () => {
    const wrong = STEP.replace('PT20M', '20 min');
    expect(readProcessNode(parsedXml(wrong))).toMatchObject({ problems: [{ code: 'JDF_VALUE' }] });
  });
});

describe('audits', () => {
  const at = Date.UTC(2024, 6, 25, 10);
  const audits: readonly Audit[] = [
    {
      kind: 'PhaseTime',
      id: 'a1',
      timeStamp: at,
      start: at - 1000,
      end: at,
      status: 'Setup',
      statusDetails: 'FormChange',
      devices: [{ deviceId: 'press' }],
      links: [
        {
          name: 'Component',
          rRef: 'sheets',
          usage: 'Output',
          actualAmount: 120,
          parts: [{ SheetName: 'S1' }],
        },
      ],
    },
    {
      kind: 'ProcessRun',
      id: 'a2',
      timeStamp: at,
      start: at - 1000,
      end: at,
      endStatus: 'Completed',
      durationS: 1,
    },
    {
      kind: 'ResourceAudit',
      id: 'a3',
      timeStamp: at,
      reason: 'ProcessResult',
      links: [{ name: 'Media', rRef: 'paper', usage: 'Input', actualAmount: 2700, amount: 2761 }],
    },
    { kind: 'Notification', id: 'a4', timeStamp: at, class: 'Warning', comment: 'Double sheet.' },
  ];

  it.each(['', 'j:'])('are read back as they were appended, in the prefix "%s" of the document', (prefix) => {
    const text = STEP.replaceAll(/<(\/?)(?=[A-Z])/g, `<$1${prefix}`).replace(
      'xmlns=',
      prefix ? 'xmlns:j=' : 'xmlns=',
    );
    const doc = appendAudits(parsedXml(text), audits);
    const again = parsedXml(writeXml(doc));
    expect(readAudits(again)).toMatchObject({ ok: true, value: audits });
    const more = appendAudits(
      again,
      audits.slice(3).map((audit) => ({ ...audit, id: 'a5' })),
    );
    expect(readAudits(more)).toMatchObject({ value: [{}, {}, {}, {}, { id: 'a5' }] });
    expect(writeXml(more).match(/AuditPool>/g)).toHaveLength(2);
    // All that was there before is still there as it was.
    expect(writeXml(more)).toContain(text.slice(text.indexOf('>') + 1));
  });

  it('of a node without any are none, and a faulty one is refused with its place', () => {
    expect(readAudits(parsedXml(STEP))).toMatchObject({ value: [] });
    const faulty = parsedXml(
      STEP.replace('  <ResourcePool>', '  <AuditPool><PhaseTime TimeStamp="now"/></AuditPool><ResourcePool>'),
    );
    expect(readAudits(faulty)).toMatchObject({
      problems: [{ code: 'JDF_VALUE', path: '/JDF/AuditPool/PhaseTime' }, {}, {}],
    });
  });
});
