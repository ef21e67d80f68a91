import { findingsIn, input, node, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const GROUP = 'Type="ProcessGroup"';
const pool = '/JDF/ResourcePool';

describe('references', () => {
  it('may lead to a resource, to one in a description of a device, to a node and to an audit', () => {
    const device = resource(
      'Device',
      '',
      '<DeviceCap><ActionPool><Action ID="a" TestRef="t"/></ActionPool></DeviceCap>',
    );
    const audits =
      '<AuditPool><Created ID="a1" TimeStamp="2024-05-06T08:00:00Z" ref="media"/>' +
      '<Modified ID="a2" refID="a1" jRef="root" TimeStamp="2024-05-06T09:00:00Z"/></AuditPool>';
    const layout = resource(
      'Layout',
      '',
      '<ContentObject CTM="1 0 0 1 0 0" Ord="0"/><MarkObject CTM="1 0 0 1 0 0" ContentRef="a"/>',
    );
    expect(findingsIn(ticket(GROUP, resource('Media') + device + layout, input('Media'), audits))).toEqual(
      [],
    );
  });

  // Which attributes hold IDs: the official JDF 1.9 schema (IDREF, IDREFS).
  it.each([
    [
      'rRef',
      resource('Component', 'ComponentType="Sheet"', '<MediaRef rRef="x"/>'),
      `error JDF_DANGLING ${pool}/Component/MediaRef`,
    ],
    [
      'rSubRef',
      resource('Component', 'ComponentType="Sheet" rSubRef="x"'),
      `error JDF_DANGLING ${pool}/Component`,
    ],
    [
      'rRefs',
      resource('Component', 'ComponentType="Sheet" rRefs="component x"'),
      `error JDF_DANGLING ${pool}/Component`,
    ],
    [
      'ContentDataRefs',
      resource('LayoutElement', 'ContentDataRefs="x"'),
      `error JDF_DANGLING ${pool}/LayoutElement`,
    ],
    [
      'ContentRef',
      resource('Layout', '', '<MarkObject CTM="1 0 0 1 0 0" ContentRef="x"/>'),
      `error JDF_DANGLING ${pool}/Layout/MarkObject`,
    ],
  ])('are followed in %s', (_name, resources, expected) => {
    expect(findingsIn(ticket(GROUP, resources))).toEqual([expected]);
  });

  it.each([
    [
      'jRef',
      '<Modified jRef="x" TimeStamp="2024-05-06T08:00:00Z"/>',
      'error JDF_DANGLING /JDF/AuditPool/Modified',
    ],
    [
      'jRef that names no node',
      '<Modified jRef="media" TimeStamp="2024-05-06T08:00:00Z"/>',
      'error JDF_LINK /JDF/AuditPool/Modified',
    ],
    [
      'refID',
      '<Created refID="x" TimeStamp="2024-05-06T08:00:00Z"/>',
      'error JDF_DANGLING /JDF/AuditPool/Created',
    ],
    [
      'ref',
      '<Created ref="x" TimeStamp="2024-05-06T08:00:00Z"/>',
      'warning JDF_DANGLING /JDF/AuditPool/Created',
    ],
  ])('are followed in audits: %s', (_name, audit, expected) => {
    const found = findingsIn(ticket(GROUP, resource('Media'), '', `<AuditPool>${audit}</AuditPool>`));
    expect(found).toEqual([expected]);
  });

  it('of a part that was sent away may lead to what stayed behind', () => {
    const ancestors = '<AncestorPool><Ancestor NodeID="p"/></AncestorPool>';
    const audits = '<AuditPool><Modified jRef="p" refID="a0" TimeStamp="2024-05-06T08:00:00Z"/></AuditPool>';
    const spawned = ticket(`${GROUP} SpawnID="s"`, '', input('Media'), ancestors + audits);
    expect(findingsIn(spawned)).toEqual(['warning JDF_DANGLING /JDF/ResourceLinkPool/MediaLink']);
  });
});

describe('links', () => {
  it('lead to a resource, not into one', () => {
    const component = resource('Component', 'ComponentType="Sheet"', '<Media ID="m"/>');
    expect(findingsIn(ticket(GROUP, component, input('Media', 'rRef="m"')))).toEqual([
      'error JDF_LINK /JDF/ResourceLinkPool/MediaLink',
    ]);
  });

  it('lead to what the node or one around it has, not one beside or below', () => {
    const media = resource('Media');
    const cut = (id: string, resources: string) => node(`${GROUP} ID="${id}"`, resources, input('Media'));
    const at = 'ResourceLinkPool/MediaLink';
    expect(findingsIn(ticket(GROUP, media, '', cut('a', '')))).toEqual([]);
    expect(findingsIn(ticket(GROUP, '', '', cut('a', media) + cut('b', '')))).toEqual([
      `error JDF_DANGLING /JDF/JDF[2]/${at}`,
    ]);
    expect(findingsIn(ticket(GROUP, '', input('Media'), cut('a', media)))).toEqual([
      `error JDF_DANGLING /JDF/${at}`,
    ]);
  });
});
