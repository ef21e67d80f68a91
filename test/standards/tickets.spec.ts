import { checkTicket, encodeXml, kindOf } from '#libs/jdf';
import type { Problem } from '#libs/kernel';
import { parsedXml } from '../kit/value-in.js';
import { bytesOf, type Sample, samples, textOfSample } from './samples.js';

const all = samples();
const tickets = all.filter(({ root }) => root === 'JDF');

/** The samples that are wrong on purpose write it in a foreign namespace, which a reader passes over. */
function withForeignContentMadeOurs(sample: Sample): string {
  return textOfSample(sample).replaceAll('JDFSchema_1_1/Invalid', 'JDFSchema_1_1');
}

const brief = (problems: readonly Problem[]) =>
  problems.map(({ severity, code, line, path }) => `${severity} ${code} ${line} ${path}`);

describe('every official sample', () => {
  it('is there in the number that was published with this set', () => {
    expect([all.length, tickets.length]).toEqual([161, 128]);
  });

  it.each(all.map((sample) => [sample.path, sample] as const))(
    '%s is read and written back byte for byte',
    (_path, sample) => {
      const bytes = bytesOf(sample);
      const doc = parsedXml(bytes);
      expect(Buffer.from(encodeXml(doc)).equals(Buffer.from(bytes))).toBe(true);
      expect(kindOf(doc)).toMatchObject({ ok: true, value: sample.root.toLowerCase() });
    },
  );
});

/**
 * Sources: semantic_issues of samples.json and what the samples' own names and comments say is wrong. Passed over on
 * purpose: the dangling references of actionPool.jdf, which lie in a description of what a device can do.
 */
const wrong: Readonly<Record<string, readonly string[]>> = {
  'jdf/samples/processes/automatedImpositionMarkObject.jdf': [
    'error JDF_DANGLING 13 /JDF/ResourcePool/Layout/MarkObject/RefAnchor',
  ],
  'jdf/samples/resources/invalidMarkObject.jdf': [
    'error JDF_ALTERNATIVE 14 /jdf:JDF/jdf:ResourcePool/Layout/MarkObject',
    'error JDF_ALTERNATIVE 19 /jdf:JDF/jdf:ResourcePool/Layout/Layout/MarkObject',
  ],
  'jdf/samples/structure/illegalIncompletePartition.jdf': [
    'error JDF_PARTITION 12 /jdf:JDF/jdf:ResourcePool/Preview/Preview[1]',
    'error JDF_PARTITION 13 /jdf:JDF/jdf:ResourcePool/Preview/Preview[2]',
  ],
  'jdf/samples/structure/illegalPartition.jdf': [
    'error JDF_PARTITION 12 /jdf:JDF/jdf:ResourcePool/Preview/Preview',
  ],
  'jdf/samples/structure/invalidDegeneratePartition.jdf': [
    'error JDF_PARTITION 10 /jdf:JDF/jdf:ResourcePool/Component[1]',
    'error JDF_PARTITION 12 /jdf:JDF/jdf:ResourcePool/Component[2]',
    'error JDF_PARTITION 16 /jdf:JDF/jdf:ResourcePool/FoldingParams/FoldingParams',
  ],
  'jdf/samples/structure/invalidInlinePartitionedMedia.jdf': [
    'error JDF_PARTITION 11 /jdf:JDF/jdf:ResourcePool/Layout/Media',
  ],
  'jdf/samples/structure/ptExpMediaWithInvalidMediaRef.jdf': [
    'error JDF_DANGLING 20 /JDF/ResourceLinkPool/ExposedMediaLink',
    'error JDF_PARTITION 15 /JDF/ResourcePool/ExposedMedia/MediaRef',
  ],
  'jdf/samples/structure/ptExpMediaWithInvalidPartitioning.jdf': [
    'error JDF_DANGLING 20 /jdf:JDF/jdf:ResourceLinkPool/jdf:ExposedMediaLink',
    'error JDF_PARTITION 13 /jdf:JDF/jdf:ResourcePool/ExposedMedia/Media/Media[1]',
  ],
  'jdf/samples/subelements/comChannelForTelephone.jdf': [
    'error JDF_LINK 15 /JDF/ResourceLinkPool/ComChannelLink',
  ],
};

describe('what is wrong with official samples beyond the schema', () => {
  it.each(tickets.map((sample) => [sample.path, sample] as const))(
    '%s is judged as the reference table says',
    (path, sample) => {
      const found = checkTicket(parsedXml(withForeignContentMadeOurs(sample)));
      expect(brief(found.filter(({ severity }) => severity === 'error'))).toEqual(wrong[path] ?? []);
    },
  );
});

/** No table says what these should be: they are pinned so that a change of a check shows what it does to real tickets. */
describe('warnings over the official samples', () => {
  it('are few, and as many as they were', () => {
    const counts: Record<string, number> = {};
    for (const sample of tickets) {
      for (const { severity, code } of checkTicket(parsedXml(textOfSample(sample)))) {
        if (severity === 'warning') counts[code] = (counts[code] ?? 0) + 1;
      }
    }
    // JDF_LINK: nearly all are snippets, which leave out what their process needs.
    expect(counts).toEqual({ JDF_LINK: 48, JDF_NETWORK: 3, JDF_UNIT: 1 });
  });
});
