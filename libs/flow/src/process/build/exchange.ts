import type { Resource } from '../../state/ticket.js';
import type { ExchangeName, ResourceClass, ResourceDraft, StepScope } from '../process-type.js';
import { madeComponent } from './components.js';
import { exposedPlates } from './exposed-plates.js';
import { separationRuns } from './run-lists.js';

const CLASSES: Record<ExchangeName, ResourceClass> = {
  RunList: 'Parameter',
  ExposedMedia: 'Handling',
  Component: 'Quantity',
};

/** The key of what a step makes, by the id of the ticket's resource. */
export const madeKey = (resourceId: string): string => `made-${resourceId}`;

/** What a step makes for those after it, with how far it is there. Data has no amount; what can be counted has. */
export function madeBy(scope: StepScope, name: ExchangeName, row: Resource): ResourceDraft {
  const described = describe(scope, name);
  const counted = name !== 'RunList';
  return {
    key: madeKey(row.id),
    name,
    class: CLASSES[name],
    status: row.status,
    shared: true,
    ...described,
    attributes: {
      ...described.attributes,
      Amount: counted ? row.planned : undefined,
      AmountProduced: counted && row.produced > 0 ? row.produced : undefined,
    },
  };
}

function describe(
  scope: StepScope,
  name: ExchangeName,
): Pick<ResourceDraft, 'attributes' | 'children' | 'refs'> {
  if (name === 'RunList') return separationRuns(scope.plan, scope.step);
  if (name === 'ExposedMedia') return exposedPlates(scope);
  return madeComponent(scope.plan, scope.step);
}
