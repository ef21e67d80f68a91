/** Tickets as a hub would send them, for the tests of the plant: one step each, with its resources. Invented jobs. */
export interface TicketWish {
  readonly jobId?: string;
  readonly jobPartId?: string;
  readonly status?: string;
  readonly activation?: string;
  readonly outAmount?: number;
  readonly inAmount?: number | null;
  readonly setup?: string;
  readonly total?: string | null;
  readonly cleanup?: string;
  readonly template?: boolean;
}

const NS = 'xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"';

function ticket(type: string, wish: TicketWish, resources: string, links: string, params: string): string {
  const { jobId = 'nine-umbrellas', jobPartId = 'step-1', status = 'Waiting', activation = 'Active' } = wish;
  const { setup = 'PT7M', total = 'PT37M', cleanup } = wish;
  const times = [
    `SetupDuration="${setup}"`,
    total === null ? '' : `TotalDuration="${total}"`,
    cleanup === undefined ? '' : `CleanupDuration="${cleanup}"`,
  ].join(' ');
  return `<?xml version="1.0" encoding="UTF-8"?>
<JDF ${NS} xsi:type="${type}" ID="n1" Type="${type}" Status="${status}" Activation="${activation}" JobID="${jobId}" JobPartID="${jobPartId}" Version="1.9"${wish.template ? ' Template="true"' : ''}>
  <AuditPool>
    <Created TimeStamp="2026-03-02T08:00:00Z" AgentName="test"/>
  </AuditPool>
  <ResourcePool>
    <NodeInfo ID="ni" Class="Parameter" Status="Available" ${times}/>
    ${params}
    ${resources}
  </ResourcePool>
  <ResourceLinkPool>
    <NodeInfoLink rRef="ni" Usage="Input"/>
    ${links}
  </ResourceLinkPool>
</JDF>
`;
}

const amount = (value: number | null): string => (value === null ? '' : ` Amount="${value}"`);

/** A sheet printed in one pass from eight plates: 3,500 good sheets out of 3,700 fed. */
export function printing(wish: TicketWish = {}): string {
  const { outAmount = 3500, inAmount = 3700 } = wish;
  return ticket(
    'ConventionalPrinting',
    wish,
    `<Media ID="paper" Class="Consumable" Status="Available" MediaType="Paper" Unit="sheets" Dimension="2551.18 1814.17"/>
    <ExposedMedia ID="plates" Class="Handling" Status="Available"/>
    <Component ID="printed" Class="Quantity" Status="Unavailable" ComponentType="Sheet" Unit="sheets"/>`,
    `<ConventionalPrintingParamsLink rRef="params" Usage="Input"/>
    <MediaLink rRef="paper" Usage="Input"${amount(inAmount)}/>
    <ExposedMediaLink rRef="plates" Usage="Input" ProcessUsage="Plate" Amount="8"/>
    <ComponentLink rRef="printed" Usage="Output"${amount(outAmount)}/>`,
    '<ConventionalPrintingParams ID="params" Class="Parameter" Status="Available" Speed="9000"/>',
  );
}

/** Eight plates named by side and separation, not counted. */
export function plates(wish: TicketWish = {}): string {
  const leaf = (ink: string): string => `<ExposedMedia Separation="${ink}"/>`;
  const side = (name: string): string =>
    `<ExposedMedia Side="${name}">${['Black', 'Cyan', 'Magenta', 'Yellow'].map(leaf).join('')}</ExposedMedia>`;
  return ticket(
    'ImageSetting',
    { setup: 'PT1M', total: 'PT17M', ...wish },
    `<Media ID="blank" Class="Consumable" Status="Available" MediaType="Plate" Unit="plates"/>
    <RunList ID="runlist" Class="Parameter" Status="Available"/>
    <ExposedMedia ID="plates" Class="Handling" Status="Unavailable" PartIDKeys="Side Separation">${side('Front')}${side('Back')}</ExposedMedia>`,
    `<MediaLink rRef="blank" Usage="Input" Amount="9"/>
    <RunListLink rRef="runlist" Usage="Input"/>
    <ExposedMediaLink rRef="plates" Usage="Output"/>`,
    '',
  );
}

/** Sheets cut into four: 1,000 sheets and a few more give 4,000 pieces. */
export function cutting(wish: TicketWish = {}): string {
  const { outAmount = 4000, inAmount = 1006 } = wish;
  return ticket(
    'Cutting',
    { setup: 'PT2M', total: 'PT22M', ...wish },
    `<Component ID="sheets" Class="Quantity" Status="Available" ComponentType="Sheet" Unit="sheets"/>
    <Component ID="pieces" Class="Quantity" Status="Unavailable" ComponentType="PartialProduct" Unit="copies"/>`,
    `<CuttingParamsLink rRef="params" Usage="Input"/>
    <ComponentLink rRef="sheets" Usage="Input"${amount(inAmount)}/>
    <ComponentLink rRef="pieces" Usage="Output"${amount(outAmount)}/>`,
    '<CuttingParams ID="params" Class="Parameter" Status="Available"/>',
  );
}
