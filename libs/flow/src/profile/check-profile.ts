import type { Plant } from '#libs/craft';
import {
  attributeOf,
  childElements,
  Findings,
  kindOf,
  nodesOf,
  processesOf,
  type XmlDocument,
  type XmlElement,
} from '#libs/jdf';
import type { Problem } from '#libs/kernel';
import { canRun, needsDevice } from './abilities.js';
import { checkBinding, checkCutting, checkStitching } from './bindery-limits.js';
import { checkFolding } from './folder-limits.js';
import { checkPrinting } from './press-limits.js';
import { type Work, workOf } from './work.js';

/**
 * What of a ticket this plant cannot execute, as warnings with the place of the node or resource: PLANT_CANNOT. Processes
 * without a device, and formats, papers, inks, folds and copies that no device of the kind takes. A Combined node needs
 * one device for all its processes; a gray box and an XJDF may be shared out to several. Messages execute nothing.
 */
export function checkProfile(doc: XmlDocument, plant: Plant): readonly Problem[] {
  const kind = kindOf(doc);
  const findings = new Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' });
  if (!kind.ok) return [];
  if (kind.value === 'xjdf') {
    const types = (attributeOf(doc.root, 'Types') ?? '').split(/\s+/).filter(Boolean);
    checkEach(
      plant,
      doc.root,
      types.filter((name) => name !== 'Product'),
      findings,
    );
    checkLimits(plant, workOf(doc, doc.root, types), findings);
  }
  if (kind.value === 'jdf') for (const node of nodesOf(doc.root)) checkNode(plant, node, findings);
  return findings.problems;
}

function checkNode(plant: Plant, node: XmlElement, findings: Findings): void {
  const processes = processesOf(node);
  const grayBox = attributeOf(node, 'Type')?.trim() === 'ProcessGroup';
  // Nodes inside a gray box say how it is to be executed.
  if (grayBox && childElements(node, 'JDF').length > 0) return;
  const lacking = checkEach(plant, node, processes, findings);
  if (!lacking && !grayBox) checkTogether(plant, node, processes, findings);
  if (processes.some((process) => LIMITS.has(process))) {
    checkLimits(plant, workOf(findings.doc, node, processes), findings);
  }
}

/** What devices of the plant can take, by the process that they are asked for. */
const LIMITS: ReadonlyMap<string, (plant: Plant, work: Work, findings: Findings) => void> = new Map([
  ['ConventionalPrinting', checkPrinting],
  ['Cutting', checkCutting],
  ['Folding', checkFolding],
  ['Stitching', checkStitching],
  ['CoverApplication', checkBinding],
]);

function checkLimits(plant: Plant, work: Work, findings: Findings): void {
  for (const process of new Set(work.processes)) {
    // People at a bench have no limits that a plant definition states.
    if (plant.devices.some((device) => device.kind === 'bench' && canRun(device, process))) continue;
    LIMITS.get(process)?.(plant, work, findings);
  }
}

/** Tells which processes no device runs; whether there are any. */
function checkEach(plant: Plant, at: XmlElement, processes: readonly string[], findings: Findings): boolean {
  const lacking = [...new Set(processes)].filter(
    (name) => needsDevice(name) && !plant.devices.some((device) => canRun(device, name)),
  );
  for (const name of lacking) {
    findings.warning('PLANT_CANNOT', at, `No device of the plant runs ${name}.`, HINT);
  }
  return lacking.length > 0;
}

function checkTogether(plant: Plant, at: XmlElement, processes: readonly string[], findings: Findings): void {
  const work = processes.filter(needsDevice);
  if (plant.devices.some((device) => work.every((name) => canRun(device, name)))) return;
  const message = `No device of the plant runs ${work.join(', ')} in one.`;
  findings.warning('PLANT_CANNOT', at, message, 'Make it nodes of their own, or have it made elsewhere.');
}

const HINT = 'Have it made elsewhere, or add a device for it to the plant definition.';
