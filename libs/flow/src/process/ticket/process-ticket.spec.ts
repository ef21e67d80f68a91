import {
  attributeOf,
  childElements,
  firstChild,
  type ProcessNode,
  readProcessNode,
  type XmlDocument,
} from '#libs/jdf';
import { bookletPlan } from '../../../../../test/kit/booklet-plan.js';
import { smallPlant } from '../../../../../test/kit/small-plant.js';
import { MONDAY, ticketFile } from '../../../../../test/kit/ticket-files.js';
import { parsedXml, valueIn } from '../../../../../test/kit/value-in.js';
import { exportTicket, processTicket } from '../index.js';

const options = { now: MONDAY, jmfUrl: 'http://127.0.0.1:7420/jmf', senderId: 'sidelay', plant: smallPlant };

function ticketFor(stepId: string, file = ticketFile(bookletPlan(), 'planned')): XmlDocument {
  return parsedXml(valueIn(processTicket(file, null, stepId, options)));
}

function nodeFor(stepId: string, file = ticketFile(bookletPlan(), 'planned')): ProcessNode {
  return valueIn(readProcessNode(ticketFor(stepId, file)));
}

describe('the ticket for a device', () => {
  it('is the node of one step, spawned from its product', () => {
    const { root } = ticketFor('print-1');
    const ancestor = firstChild(firstChild(root, 'AncestorPool')!, 'Ancestor')!;
    expect([attributeOf(root, 'Type'), attributeOf(root, 'JobID'), attributeOf(root, 'JobPartID')]).toEqual([
      'ConventionalPrinting',
      'J-300',
      'print-1',
    ]);
    const running = ticketFile(bookletPlan(), 'running');
    const entry = running.entries.find(({ stepId }) => stepId === 'print-1')!;
    expect(attributeOf(ticketFor('print-1', running).root, 'SpawnID')).toBe(entry.id);
    expect([attributeOf(ancestor, 'NodeID'), attributeOf(ancestor, 'Type')]).toEqual(['Product', 'Product']);
  });

  it('says when, how long and how urgent, and where to return it', () => {
    const node = nodeFor('print-1');
    expect(node).toMatchObject({
      types: ['ConventionalPrinting'],
      setupS: 200,
      totalS: 500,
      runS: 300,
      jobPriority: 60,
      start: MONDAY + 120 * 60_000,
    });
    const [info] = childElements(firstChild(node.node, 'ResourcePool')!, 'NodeInfo');
    expect(attributeOf(info!, 'TargetRoute')).toBe('http://127.0.0.1:7420/jmf');
  });

  it('names plates, paper and ink of a press with their amounts', () => {
    const { inputs, outputs } = nodeFor('print-1');
    const input = (name: string) => inputs.find((one) => one.name === name)!;
    expect(input('Media')).toMatchObject({ amount: 436 });
    expect(attributeOf(input('Media').view, 'Weight')).toBe('115');
    expect(input('ExposedMedia')).toMatchObject({ processUsage: 'Plate', amount: 8 });
    expect(input('ExposedMedia').leaves).toHaveLength(8);
    expect(input('Ink').partAmounts?.map(({ amount, parts }) => [parts?.[0]?.Separation, amount])).toEqual([
      ['Cyan', 0.3],
      ['Magenta', 0.3],
      ['Yellow', 0.3],
      ['Black', 0.4],
    ]);
    expect(outputs).toMatchObject([{ name: 'Component', amount: 311 }]);
  });

  it('gives the size of the plates where the plant is known', () => {
    const plate = nodeFor('plates-1').inputs.find(({ name }) => name === 'Media')!;
    // 1030 × 790 mm at 72 points an inch.
    expect(attributeOf(plate.view, 'Dimension')).toBe('2919.685 2239.37');
    expect(attributeOf(plate.view, 'ProductID')).toBe('plate-full');
  });

  it('states what the step before really made, once it is there', () => {
    const planned = nodeFor('fold-1').inputs.find(({ name }) => name === 'Component')!;
    const real = nodeFor('fold-1', ticketFile(bookletPlan(), 'running')).inputs.find(
      ({ name }) => name === 'Component',
    )!;
    expect(planned.amount).toBe(311);
    expect(real.partAmounts?.[0]?.amount).toBe(310);
  });

  it('gives things the IDs that they have in the exported ticket', () => {
    const file = ticketFile(bookletPlan(), 'planned');
    const whole = exportTicket(file, null, { now: MONDAY, version: '0.1.0', plant: smallPlant });
    const text = whole.ok ? whole.value : '';
    for (const { id } of [...nodeFor('stitch').inputs, ...nodeFor('stitch').outputs]) {
      expect(text).toContain(`ID="${id}"`);
    }
  });

  it('may change what the step makes, and only read all else that it shares', () => {
    const { root } = ticketFor('print-1');
    const pool = childElements(firstChild(root, 'ResourcePool')!);
    const locked = (name: string) =>
      pool.filter(({ local }) => local === name).map((one) => attributeOf(one, 'Locked'));
    expect(locked('Component')).toEqual([undefined]);
    expect(locked('ExposedMedia')).toEqual(['true']);
  });

  it('is refused for a step that is not there', () => {
    const made = processTicket(ticketFile(bookletPlan(), 'planned'), null, 'laminate', options);
    expect(made).toMatchObject({ ok: false, problems: [{ code: 'STEP_UNKNOWN' }] });
  });
});
