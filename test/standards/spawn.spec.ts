/** Tickets that are spawned and merged here, judged by the standard's own schema (JDF.xsd, with xmllint). */
import fc from 'fast-check';
import {
  attributeOf,
  checkTicket,
  documentOf,
  elementsLike,
  firstChild,
  merge,
  nodesOf,
  parseXml,
  spawn,
  withChildren,
  writeXml,
  type XmlDocument,
} from '#libs/jdf';
import { marksLeft, saidBy, ticketPlans, ticketText, workOf } from '../kit/random-tickets.js';
import { forwards, workedOutside } from '../kit/spawned-work.js';
import { parsedXml } from '../kit/value-in.js';
import { samples, textOfSample } from './samples.js';
import { schemaFaults } from './xmllint.js';

const plans = fc.sample(ticketPlans, { seed: 20260513, numRuns: 40 });
const documents: Record<string, string> = {};
const parsed: Record<string, XmlDocument> = {};
for (const [at, plan] of plans.entries()) {
  const text = ticketText(plan);
  const doc = parsedXml(text);
  documents[`plan${at}.jdf`] = text;
  let count = 0;
  workedOutside(plan, doc, workOf(plan), forwards, (seen) => {
    const name = `plan${at}-${count++}.jdf`;
    documents[name] = writeXml(seen);
    parsed[name] = parsedXml(documents[name]);
  });
}

describe('tickets spawned and merged', () => {
  it('are valid against the schema at every stage', () => {
    expect(Object.keys(documents).length).toBeGreaterThan(250);
    expect(schemaFaults(documents)).toEqual({});
  });

  it('pass our own checks at every stage', () => {
    const faults = Object.entries(parsed).flatMap(([name, doc]) =>
      checkTicket(doc)
        .filter(({ severity }) => severity === 'error')
        .map((problem) => `${name} ${problem.path} ${problem.message}`),
    );
    expect(faults).toEqual([]);
  });
});

/** A sample inside a group that holds its resources: so its node uses, and makes, what lies outside it. */
function grouped(text: string): XmlDocument | null {
  const parsed = parseXml(text);
  const root = parsed.ok ? parsed.value.root : null;
  if (root === null || firstChild(root, 'AncestorPool') !== undefined) return null;
  const pool = firstChild(root, 'ResourcePool');
  const group = elementsLike(root)(
    'JDF',
    {
      ID: 'around.group',
      Type: 'ProcessGroup',
      Status: 'Waiting',
      Version: '1.9',
      JobID: attributeOf(root, 'JobID'),
    },
    [
      ...(pool === undefined ? [] : [pool]),
      withChildren(
        root,
        root.children.filter((one) => one !== pool),
      ),
    ],
  );
  const xmlns = root.attributes.filter(({ name }) => name.startsWith('xmlns'));
  const whole = documentOf({ ...group, attributes: [...group.attributes, ...xmlns] });
  return parsedXml(writeXml(whole));
}

/** Every node inside a sample of the standard, and every sample's root inside a group. */
const nodesInside = samples()
  .filter(({ root, valid }) => root === 'JDF' && valid)
  .flatMap((sample) => {
    const doc = grouped(textOfSample(sample));
    const nodes = doc === null ? [] : [...nodesOf(doc.root)].slice(1);
    const ids = nodes.map((node) => attributeOf(node, 'ID')!);
    return ids
      .filter((id) => ids.indexOf(id) === ids.lastIndexOf(id))
      .map((id) => ({ path: sample.path, id, doc: doc! }));
  });

describe('nodes of the official samples', () => {
  const act = { at: Date.UTC(2026, 4, 4), agent: { name: 'test' } };
  const written: Record<string, string> = {};

  it('leave and come back unchanged without a trace but the audits', () => {
    expect(nodesInside.length).toBeGreaterThan(100);
    for (const [i, { path, id, doc }] of nodesInside.entries()) {
      const out = spawn(doc, { nodeId: id }, { ...act, spawnId: `t${i}` });
      if (!out.ok) throw new Error(`${path} ${id}: ${JSON.stringify(out.problems)}`);
      written[`${i}-parent.jdf`] = writeXml(out.value.parent);
      written[`${i}-child.jdf`] = writeXml(out.value.child);
      const back = merge(out.value.parent, parsedXml(writeXml(out.value.child)), act);
      if (!back.ok) throw new Error(`${path} ${id}: ${JSON.stringify(back.problems)}`);
      expect(back.problems).toEqual([]);
      expect(saidBy(back.value.root)).toBe(saidBy(doc.root));
      expect(marksLeft(back.value)).toEqual(marksLeft(doc));
    }
  });

  it('are valid while they are out, on both sides', () => {
    expect(Object.keys(written).length).toBe(2 * nodesInside.length);
    // The schema takes a Preview in a pool for the element that any element may hold, which has no such attributes.
    const quirk = /^element Preview: .*The attribute '(Locked|SpawnStatus|SpawnIDs)' is not allowed/;
    const faults = Object.entries(schemaFaults(written)).flatMap(([name, found]) =>
      found.filter((fault) => !quirk.test(fault)).map((fault) => `${name} ${fault}`),
    );
    expect(faults).toEqual([]);
  });
});
