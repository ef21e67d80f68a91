import type { Problem } from '#libs/kernel';
import { descendants, pathOf, type XmlDocument, type XmlElement } from '../xml/index.js';

/**
 * A finding about a converted document at its place in the document that it was made from: the element on the same line
 * that is called alike, else the first on that line, else the root.
 */
export function placeInSource(source: XmlDocument, problem: Problem): Problem {
  const step =
    problem.path
      ?.split('/')
      .at(-1)
      ?.replace(/\[\d+\]$/, '') ?? '';
  const there = problem.line === null ? [] : elementsOnLine(source, problem.line);
  const found =
    there.find(({ local }) => local === step || step.startsWith(local)) ?? there[0] ?? source.root;
  return { ...problem, line: found.line || null, path: pathOf(source, found) };
}

function elementsOnLine(doc: XmlDocument, line: number): XmlElement[] {
  return [...descendants(doc.root)].filter((el) => el.line === line);
}
