import type { Partition } from '../../partition/index.js';
import { attributeOf, type XmlElement } from '../../xml/index.js';
import { attributeNode } from '../ledger.js';
import { effectiveSource, type Overflow, without } from '../source.js';
import { complete, Draft, fillDraft, finish } from '../translate.js';
import type { Job } from './job.js';
import { type Resources, shapeOf } from './resources.js';

// A bare number of colours names no inks; these two are understood by everybody (common practice, no source).
const BY_NUMBER: Readonly<Record<string, string>> = { '1': 'Black', '4': 'Cyan Magenta Yellow Black' };

/**
 * Colours of each surface. An intent that is not divided by Side holds for both sides, as far as the product is printed
 * on both.
 */
export function colourIntent(
  job: Job,
  resources: Resources,
  leaves: readonly Partition[],
  sides: string | undefined,
  overflow: Overflow,
): XmlElement | undefined {
  const { direction } = resources;
  const draft = new Draft('ColorIntent', shapeOf('ColorIntent'));
  for (const leaf of leaves) {
    const source = effectiveSource(leaf.chain);
    for (const surface of surfacesOf(leaf, sides)) {
      if (draft.children.some((child) => attributeOf(child, 'Surface') === surface)) continue;
      const one = new Draft('SurfaceColor', shapeOf('SurfaceColor'));
      one.attributes.set('Surface', surface);
      fillDraft(
        direction,
        without(source, [], ['ID', 'Class', 'Status', 'PartIDKeys', 'Side']),
        one,
        overflow,
      );
      numberOfColours(
        job,
        source.attributes.find(({ local }) => local === 'NumColors'),
        one,
      );
      if (complete(direction, source, one) !== undefined) continue;
      draft.children.push(finish(direction, one));
    }
    job.ledger.carry(...leaf.chain);
    for (const level of leaf.chain) job.ledger.carry(attributeNode(level, 'Side'));
  }
  return draft.children.length === 0 ? undefined : finish(direction, draft);
}

function surfacesOf(leaf: Partition, sides: string | undefined): readonly string[] {
  if (leaf.keys.Side !== undefined) return [leaf.keys.Side];
  if (sides === 'OneSided' || sides === 'OneSidedFront') return ['Front'];
  return sides === 'OneSidedBack' ? ['Back'] : ['Front', 'Back'];
}

function numberOfColours(job: Job, stated: ReturnType<typeof attributeNode>, one: Draft): void {
  if (stated === undefined) return;
  const names = one.attributes.get('ColorsUsed');
  const known = BY_NUMBER[stated.value];
  if (names !== undefined ? names.split(' ').length !== Number(stated.value) : known === undefined) return;
  if (names === undefined && known !== undefined) one.attributes.set('ColorsUsed', known);
  job.ledger.carry(stated);
}
