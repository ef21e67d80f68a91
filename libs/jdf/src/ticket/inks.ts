import { effectivePart, partitionKeysOf, selectPart } from '../partition/index.js';
import { attributeOf, childAt, childElements, type XmlDocument, type XmlElement } from '../xml/index.js';
import type { Intent } from './intents.js';
import { type Placed, placed } from './placed.js';

export interface Inks {
  readonly front?: Placed<readonly string[]>;
  readonly back?: Placed<readonly string[]>;
}

/** The names the standard uses for the four process colours, in the order they are usually named. */
export const processColours = ['Cyan', 'Magenta', 'Yellow', 'Black'] as const;

// A bare number of colours names no inks; these two are understood by everybody (common practice, no source).
const BY_NUMBER: Readonly<Record<string, readonly string[]>> = {
  '0': [],
  '1': ['Black'],
  '4': processColours,
};

/**
 * The inks of each side of a ColorIntent: partitioned by Side, or one for both sides. A part that says nothing of inks
 * leaves its side open.
 */
export function inksOf(doc: XmlDocument, intent: Intent | undefined, sides: string | undefined): Inks {
  if (intent === undefined) return {};
  if (partitionKeysOf(intent.resource).includes('Side')) {
    return { front: inksOfSide(doc, intent, 'Front'), back: inksOfSide(doc, intent, 'Back') };
  }
  const both = inksIn(doc, intent.view, intent.resource);
  const none = both && { ...both, value: [] };
  return {
    front: sides === 'OneSidedBack' || sides === 'Unprinted' ? none : both,
    back: sides === 'OneSided' || sides === 'Unprinted' ? none : both,
  };
}

function inksOfSide(doc: XmlDocument, intent: Intent, side: string): Placed<readonly string[]> | undefined {
  const found = selectPart(intent.resource, { ...intent.selected.keys, Side: side });
  // Only one side is described: nothing is printed on the other.
  if (found === undefined || found.keys.Side !== side) return placed(doc, intent.resource, []);
  return inksIn(doc, effectivePart(found), found.chain.at(-1)!);
}

function inksIn(doc: XmlDocument, view: XmlElement, at: XmlElement): Placed<readonly string[]> | undefined {
  const used = childAt(view, 'ColorsUsed');
  if (used !== undefined) {
    const names = childElements(used, 'SeparationSpec').flatMap((spec) => attributeOf(spec, 'Name') ?? []);
    return placed(doc, used, names);
  }
  const byNumber = BY_NUMBER[attributeOf(view, 'NumColors') ?? ''];
  return byNumber && placed(doc, at, byNumber);
}
