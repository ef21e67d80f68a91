import type { Plan, PlanProductPart } from '#libs/craft';
import {
  documentOf,
  element,
  indented,
  JDF_NAMESPACE,
  type XmlDocument,
  type XmlElement,
  XSI_NAMESPACE,
} from '#libs/jdf';
import { isoTime, roundTo } from '#libs/kernel';
import type { Ticket } from '../../state/ticket.js';
import { points, processInkCmyk, shortText } from '../build/values.js';

/** The version of the standard that is written where a document does not say its own. */
export const OWN_VERSION = '1.9';

/** A product node for a ticket that did not come in as one: what was ordered, in the standard's intents. */
export function productDocument(ticket: Ticket, plan: Plan): XmlDocument {
  const resources = [
    component(ticket, plan),
    ...intents(ticket, plan),
    nodeInfo(ticket),
    ...customer(ticket),
  ];
  const root = element(
    'JDF',
    {
      xmlns: JDF_NAMESPACE,
      'xmlns:xsi': XSI_NAMESPACE,
      ID: 'Product',
      Type: 'Product',
      'xsi:type': 'Product',
      Status: 'Waiting',
      Version: OWN_VERSION,
      MaxVersion: OWN_VERSION,
      JobID: shortText(ticket.jobId),
      JobPartID: 'product',
      DescriptiveName: shortText(plan.name),
    },
    [
      element('ResourcePool', {}, resources),
      element(
        'ResourceLinkPool',
        {},
        resources.map((resource) => link(resource, ticket)),
      ),
    ],
  );
  return documentOf(indented(root));
}

function link(resource: XmlElement, ticket: Ticket): XmlElement {
  const made = resource.local === 'Component';
  const rRef = resource.attributes.find(({ name }) => name === 'ID')?.value;
  return element(`${resource.local}Link`, {
    rRef,
    Usage: made ? 'Output' : 'Input',
    Amount: made ? ticket.quantity : undefined,
  });
}

const intent = (name: string, children: readonly XmlElement[], attributes = {}): XmlElement =>
  element(name, { ID: `Wanted${name}`, Class: 'Intent', Status: 'Available', ...attributes }, children);

const span = (name: string, DataType: string, Actual: string | number): XmlElement =>
  element(name, { DataType, Actual });

const COMPONENT = 'WantedComponent';

function component(ticket: Ticket, plan: Plan): XmlElement {
  return element('Component', {
    ID: COMPONENT,
    Class: 'Quantity',
    Status: 'Unavailable',
    ComponentType: plan.binding.kind === 'None' ? 'Sheet FinalProduct' : 'Block FinalProduct',
    DescriptiveName: shortText(plan.name),
    Amount: ticket.quantity,
  });
}

function intents(ticket: Ticket, plan: Plan): readonly XmlElement[] {
  const { product, binding } = plan;
  const { trimWidthMm, trimHeightMm, pages } = product;
  const thicknessMm = (product.stockCaliperUm / 1000) * Math.ceil(pages / 2);
  return [
    intent('LayoutIntent', [
      ...(plan.sheets[0] ? [span('Bleed', 'NumberSpan', points(plan.sheets[0].bleedMm))] : []),
      span('FinishedDimensions', 'ShapeSpan', points(trimWidthMm, trimHeightMm, thicknessMm)),
      span('Pages', 'IntegerSpan', pages),
    ]),
    intent('MediaIntent', [
      span('MediaType', 'EnumerationSpan', 'Paper'),
      element('StockBrand', { DataType: 'StringSpan', Actual: product.stock }),
      span('Thickness', 'NumberSpan', roundTo(product.stockCaliperUm, 1)),
      span('Weight', 'NumberSpan', product.stockGsm),
    ]),
    intent('ColorIntent', [side('Front', product), side('Back', product)], { PartIDKeys: 'Side' }),
    intent('BindingIntent', [span('BindingType', 'EnumerationSpan', binding.kind)]),
    ...(ticket.due === null ? [] : [delivery(ticket, isoTime(ticket.due))]),
  ];
}

/** All of it in one drop: an order says when, and not where to. */
function delivery({ quantity }: Ticket, required: string): XmlElement {
  const goods = element('ComponentRef', { rRef: COMPONENT });
  const item = element('DropItemIntent', { Amount: quantity }, [goods]);
  return intent('DeliveryIntent', [
    span('Required', 'TimeSpan', required),
    element('DropIntent', {}, [item]),
  ]);
}

function side(Side: 'Front' | 'Back', product: PlanProductPart): XmlElement {
  const inks = Side === 'Front' ? product.inksFront : product.inksBack;
  const spots = inks.filter((ink) => processInkCmyk(ink) === undefined);
  return element('ColorIntent', { Side, NumColors: inks.length }, [
    element(
      'ColorsUsed',
      {},
      inks.map((Name) => element('SeparationSpec', { Name })),
    ),
    ...(spots.length === 0
      ? []
      : [
          element(
            'ColorPool',
            {},
            spots.map((Name) => element('Color', { Name })),
          ),
        ]),
  ]);
}

function nodeInfo(ticket: Ticket): XmlElement {
  return element('NodeInfo', {
    ID: 'WantedNodeInfo',
    Class: 'Parameter',
    Status: 'Available',
    JobPriority: ticket.priority,
    LastEnd: ticket.due === null ? undefined : isoTime(ticket.due),
  });
}

function customer(ticket: Ticket): readonly XmlElement[] {
  if (ticket.customer === null) return [];
  return [
    element(
      'CustomerInfo',
      {
        ID: 'WantedCustomerInfo',
        Class: 'Parameter',
        Status: 'Available',
        CustomerJobName: shortText(ticket.name),
      },
      [
        element('Contact', { ContactTypes: 'Customer' }, [
          element('Company', { OrganizationName: shortText(ticket.customer) }),
        ]),
      ],
    ),
  ];
}
