/** Tickets that are spawned and merged here, judged by the standard's own schema (JDF.xsd, with xmllint). */
import fc from 'fast-check';
import { checkTicket, writeXml, type XmlDocument } from '#libs/jdf';
import { parsedTicket, ticketPlans, ticketText, workOf } from '../kit/random-tickets.js';
import { forwards, workedOutside } from '../kit/spawned-work.js';
import { schemaFaults } from './xmllint.js';

const plans = fc.sample(ticketPlans, { seed: 20260513, numRuns: 40 });
const documents: Record<string, string> = {};
const parsed: Record<string, XmlDocument> = {};
for (const [at, plan] of plans.entries()) {
  const text = ticketText(plan);
  const doc = parsedTicket(text);
  documents[`plan${at}.jdf`] = text;
  let count = 0;
  workedOutside(plan, doc, workOf(plan), forwards, (seen) => {
    const name = `plan${at}-${count++}.jdf`;
    documents[name] = writeXml(seen);
    parsed[name] = parsedTicket(documents[name]);
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
