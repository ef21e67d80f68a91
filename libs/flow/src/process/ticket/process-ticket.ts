import type { Plant } from '#libs/craft';
import {
  attributeOf,
  documentOf,
  element,
  indented,
  JDF_NAMESPACE,
  writeXml,
  type XmlElement,
  XSI_NAMESPACE,
} from '#libs/jdf';
import { done, error, hasErrors, type Instant, isoTime, type Result, refuse } from '#libs/kernel';
import type { StoredDocument } from '../../ports.js';
import type { Step, TicketFile } from '../../state/ticket.js';
import { shortText } from '../build/values.js';
import type { Registry } from '../registry.js';
import { describeNode } from './describe-node.js';
import { nameProduct, productOf } from './final-product.js';
import { IdBook } from './ids.js';
import { OWN_VERSION, productDocument } from './product-node.js';
import { jdfOf, scopes } from './scope.js';
import { linkPool, nodeAttributes, resourcesOf, writeResource } from './write-node.js';

export interface ProcessTicketOptions {
  readonly now: Instant;
  /** Where the device sends its messages and the finished ticket. */
  readonly jmfUrl: string;
  /** Who sends it, for the audits. */
  readonly senderId: string;
  /** What is known of the machines, such as sizes of plates. */
  readonly plant?: Plant;
}

/**
 * What a device is sent for one step: the step's node on its own, spawned from the product node, with a copy of every
 * resource that it links. Inputs state what is really there. Errors: PLAN_MISSING, STEP_UNKNOWN, PLAN_IMPOSSIBLE.
 */
export function writeProcessTicket(
  registry: Registry,
  file: TicketFile,
  original: StoredDocument | null,
  stepId: string,
  options: ProcessTicketOptions,
): Result<string> {
  const { ticket } = file;
  if (ticket.plan === null) return refuse(error('PLAN_MISSING', `Ticket ${ticket.id} has no plan.`));
  const planStep = ticket.plan.steps.find((step) => step.id === stepId);
  const step = file.steps.find((row) => row.id === stepId);
  if (planStep === undefined || step === undefined) {
    return refuse(error('STEP_UNKNOWN', `Ticket ${ticket.id} has no step "${stepId}".`));
  }
  const document = jdfOf(original) ?? productDocument(ticket, ticket.plan);
  const product = productOf(document);
  const ids = new IdBook(document);
  nameProduct(document, product, file, ids);
  const idOf = (key: string): string => ids.idOf(key);
  const scopeOf = scopes(ticket.plan, options.plant ?? null, file, original, ids);
  const node = describeNode(planStep, step, {
    file,
    registry,
    scopeOf,
    targetRoute: options.jmfUrl,
    realInputs: true,
  });
  if (hasErrors(node.problems)) return refuse(...node.problems);
  const version = attributeOf(document.root, 'Version') ?? OWN_VERSION;
  const root = element(
    'JDF',
    {
      xmlns: JDF_NAMESPACE,
      'xmlns:xsi': XSI_NAMESPACE,
      ...nodeAttributes(node, idOf),
      JobID: shortText(ticket.jobId),
      DescriptiveName: shortText(ticket.name),
      Version: version,
      MaxVersion: attributeOf(document.root, 'MaxVersion') ?? version,
      SpawnID: spawnId(file, step),
    },
    [
      element('AncestorPool', {}, [ancestor(product, file)]),
      element('AuditPool', {}, [
        element('Created', { TimeStamp: isoTime(options.now), AgentName: shortText(options.senderId) }),
      ]),
      element(
        'ResourcePool',
        {},
        resourcesOf([node]).map((draft) => writeResource(draft, idOf)),
      ),
      linkPool(node, idOf),
    ],
  );
  return done(writeXml(documentOf(indented(root))), node.problems);
}

function ancestor(product: XmlElement, { ticket }: TicketFile): XmlElement {
  const of = (name: string): string | undefined => attributeOf(product, name);
  return element('Ancestor', {
    NodeID: of('ID'),
    Type: of('Type'),
    JobID: of('JobID') ?? shortText(ticket.jobId),
    JobPartID: of('JobPartID'),
    Status: ticket.status,
    Activation: ticket.activation,
    Version: of('Version'),
    MaxVersion: of('MaxVersion'),
  });
}

/** One token for each delivery: a device can tell a ticket sent again from the one it has. */
function spawnId(file: TicketFile, step: Step): string {
  const entry = file.entries.filter((row) => row.stepId === step.id).at(-1);
  return shortText(`s-${entry?.id ?? `${file.ticket.id}-${step.ordinal}`}`);
}
