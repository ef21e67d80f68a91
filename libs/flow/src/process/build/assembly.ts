import type { Plan } from '#libs/craft';
import { element, type XmlElement } from '#libs/jdf';
import type { ResourceDraft } from '../process-type.js';
import { token } from './values.js';

/**
 * How the signatures come together: nested for saddle work (each inside the one before), one behind the other where they
 * are gathered. Positions along the spine count from the foot, so the foot is the jog side.
 */
export function assembly(plan: Plan): ResourceDraft {
  const { kind, signatureOrder } = plan.binding;
  const order = kind === 'SaddleStitch' ? 'Collecting' : kind === 'None' ? 'None' : 'Gathering';
  const section = (name: string, children: readonly XmlElement[] = []) =>
    element('AssemblySection', { AssemblyIDs: token(name) }, children);
  const nested = signatureOrder.reduceRight<readonly XmlElement[]>(
    (inner, name) => [section(name, inner)],
    [],
  );
  return {
    key: 'assembly',
    name: 'Assembly',
    class: 'Parameter',
    shared: true,
    attributes: { Order: order, BindingSide: 'Left', JogSide: 'Bottom' },
    children: order === 'Collecting' ? nested : signatureOrder.map((name) => section(name)),
  };
}
