import { cutting, plates, printing } from '../../../../test/kit/plant-tickets.js';
import { profiles } from '../profiles/index.js';
import { readWork } from './read-work.js';
import { usedOf } from './work.js';

function work(ticket: string, kind: keyof typeof profiles) {
  const read = readWork(ticket, profiles[kind]);
  if (!read.ok) throw new Error(read.text);
  return read.work;
}

describe('the work in a ticket', () => {
  it('is read with its times, amounts and resources', () => {
    expect(work(printing(), 'press')).toMatchObject({
      jobId: 'nine-umbrellas',
      jobPartId: 'step-1',
      types: ['ConventionalPrinting'],
      setupS: 420,
      runS: 1800,
      speedPerHour: 9000,
      outAmount: 3500,
      outUnit: 'sheets',
      feedPieces: 3700,
      inputs: [
        { name: 'Media', resourceId: 'paper', amount: 3700, fed: true, piecesPerUnit: 1 },
        { name: 'ExposedMedia', resourceId: 'plates', amount: 8, fed: false },
      ],
    });
  });

  it('counts plates by their leaves where no amount is given', () => {
    expect(work(plates(), 'platesetter')).toMatchObject({ outAmount: 8, feedPieces: 9 });
  });

  it('tells from the amounts, or from the blocks, how many pieces a cut sheet gives', () => {
    expect(work(cutting(), 'guillotine')).toMatchObject({ outAmount: 4000, feedPieces: 4024 });
    const blocks = ['A', 'B', 'C', 'D'].map(
      (name) => `<CutBlock BlockName="${name}" BlockType="CutBlock" BlockSize="419.5 595.3"/>`,
    );
    const named = cutting({ inAmount: 500 }).replace(
      '<CuttingParams ID="params" Class="Parameter" Status="Available"/>',
      `<CuttingParams ID="params" Class="Parameter" Status="Available">${blocks.join('')}</CuttingParams>`,
    );
    expect(work(named, 'guillotine').feedPieces).toBe(2000);
  });

  it('takes the amount from the parts of the link, waste left out of what is planned to come out', () => {
    const pool =
      '<AmountPool><PartAmount Amount="3500"><Part Condition="Good"/></PartAmount><PartAmount Amount="120"><Part Condition="Waste"/></PartAmount></AmountPool>';
    const parted = printing().replace(
      '<ComponentLink rRef="printed" Usage="Output" Amount="3500"/>',
      `<ComponentLink rRef="printed" Usage="Output">${pool}</ComponentLink>`,
    );
    expect(work(parted, 'press').outAmount).toBe(3500);
  });

  it('takes the job from the ancestors of a spawned ticket', () => {
    const spawned = printing()
      .replace(' JobID="nine-umbrellas"', ' SpawnID="s1"')
      .replace(
        '<AuditPool>',
        '<AncestorPool><Ancestor NodeID="n0" JobID="salt-harbour"/></AncestorPool><AuditPool>',
      );
    expect(work(spawned, 'press').jobId).toBe('salt-harbour');
  });

  it('is the first node of several that the machine can execute', () => {
    const inner = (text: string, id: string) =>
      text
        .slice(text.indexOf('<JDF'))
        .replaceAll(/\b(ID|rRef)="/g, `$1="${id}-`)
        .replace(/JobID="[^"]*" /, '');
    const both = `<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="root" Type="Product" Status="Waiting" JobID="both" Version="1.9">${inner(plates({ jobPartId: 'p' }), 'a')}${inner(printing({ jobPartId: 'q' }), 'b')}</JDF>`;
    expect(work(both, 'press')).toMatchObject({ jobId: 'both', jobPartId: 'q', nodeId: 'b-n1' });
    expect(work(both, 'platesetter')).toMatchObject({ jobId: 'both', jobPartId: 'p', nodeId: 'a-n1' });
  });
});

describe('the use of an input', () => {
  it('rounds up to whole sheets and never calls a good sheet waste', () => {
    const [sheets] = work(cutting(), 'guillotine').inputs;
    expect(usedOf(sheets!, { good: 8, waste: 0 })).toEqual({ actual: 2, waste: 0 });
    expect(usedOf(sheets!, { good: 8, waste: 1 })).toEqual({ actual: 3, waste: 1 });
    expect(usedOf(sheets!, { good: 7, waste: 1 })).toEqual({ actual: 2, waste: 0 });
  });
});
