import { nodesOf, replaceElements, writeXml } from '#libs/jdf';
import { input, node, resource, ticket } from '../../../../../test/kit/small-ticket.js';
import { parsedXml } from '../../../../../test/kit/value-in.js';
import { restated } from './stated-status.js';

/** A product whose NodeInfo is so, once the product is in progress. */
function begun(info: string, inside = ''): string {
  const doc = parsedXml(ticket('Type="Product"', info, input('NodeInfo'), inside));
  const [product] = nodesOf(doc.root);
  const changed = replaceElements(doc, restated(doc, product!, 'InProgress'));
  return writeXml(changed).replace(/^.*?<ResourcePool>(.*?)<\/ResourcePool>.*$/, '$1');
}

// JDF NodeInfo NodeStatus says of a node, or of a part of it, what JDF/@Status says of the whole.
describe('the status that a document states of its product', () => {
  it('is the one that it has now', () => {
    const info = resource('NodeInfo', 'NodeStatus="Waiting" JobPriority="70"');
    expect(begun(info)).toBe(info.replace('Waiting', 'InProgress'));
  });

  it('is that of the whole, and of no part', () => {
    const leaf = (more: string) => `<NodeInfo SheetName="S1" ${more}/>`;
    const info = (status: string, more: string) =>
      resource('NodeInfo', `PartIDKeys="SheetName"${status}`, leaf(more));
    expect(begun(info('', 'NodeStatus="Completed" Start="2026-01-05T08:00:00Z"'))).toBe(
      resource(
        'NodeInfo',
        'PartIDKeys="SheetName" NodeStatus="InProgress"',
        leaf('Start="2026-01-05T08:00:00Z"'),
      ),
    );
  });

  it('stays unsaid where it was, and as it is where another node has it too', () => {
    const silent = resource('NodeInfo', 'JobPriority="70"');
    expect(begun(silent)).toBe(silent);
    const shared = resource('NodeInfo', 'NodeStatus="Waiting"');
    expect(begun(shared, node('ID="n" Type="Folding"', '', input('NodeInfo')))).toBe(shared);
  });
});
