import { problemsIn, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const link = (id: string, more = '', inside = '', name = 'Media') =>
  `<${name}Link rRef="${id}" Usage="Input" ${more}>${inside}</${name}Link>`;
const used = link('new', 'ActualAmount="9"');
const planned = link('old');
const created = (id: string, hour: number) => `<Created TimeStamp="2024-05-06T0${hour}:00:00Z" ref="${id}"/>`;

/** A record with these links after the audits `before`, over two resources that say this of themselves. */
const told = (links: string, { before = '', ofNew = '', ofOld = '' } = {}) =>
  problemsIn(
    ticket(
      'Type="ProcessGroup"',
      resource('Media', `ID="new" ${ofNew}`) + resource('Media', `ID="old" ${ofOld}`) + resource('Ink'),
      '',
      `<AuditPool>${before}<ResourceAudit TimeStamp="2024-05-06T09:00:00Z">\n${links}</ResourceAudit></AuditPool>`,
    ),
  ).filter(({ code }) => code === 'JDF_AUDIT');

// Source: JDF ResourceAudit, whose first link is that of the new resource and the second that of the old one.
describe('a record of use', () => {
  it.each([
    ['what was used alone', link('new', 'ActualAmount="9"'), {}],
    ['what was used, then what was planned', used + planned, {}],
    ['two figures of which nothing says which is which', link('new') + link('old'), {}],
    ['what is open, then what is locked', link('new') + link('old'), { ofOld: 'Locked="true"' }],
    [
      'what was made later, then what before',
      link('new') + link('old'),
      { before: created('old', 7) + created('new', 8) },
    ],
  ])('may tell of %s', (_what, links, more) => {
    expect(told(links, more)).toEqual([]);
  });

  const pool = '<AmountPool><PartAmount ActualAmount="9"/></AmountPool>';
  it.each([
    ['the actual amount', planned + used, {}, 'with ActualAmount'],
    ['the actual amounts of parts', planned + link('new', '', pool), {}, 'with ActualAmount'],
    [
      'what can still be changed',
      link('old') + link('new'),
      { ofOld: 'Locked="true"' },
      'to the resource that is not Locked',
    ],
    [
      'what was made later',
      link('old') + link('new'),
      { before: created('old', 7) + created('new', 8) },
      'to the resource that was Created later',
    ],
  ])('does not tell last of %s', (_what, links, more, which) => {
    expect(told(links, more)).toMatchObject([
      {
        severity: 'warning',
        line: 1,
        path: '/JDF/AuditPool/ResourceAudit',
        message: 'ResourceAudit tells of the old resource before the new one.',
        hint: `Put the link ${which} first.`,
      },
    ]);
  });

  it('is of one resource in two states', () => {
    expect(told(used + planned + link('old'))).toMatchObject([
      { path: '/JDF/AuditPool/ResourceAudit/MediaLink[3]', message: 'ResourceAudit has a third link.' },
    ]);
    expect(told(used + link('ink', '', '', 'Ink'))).toMatchObject([
      { path: '/JDF/AuditPool/ResourceAudit', message: 'ResourceAudit has links MediaLink and InkLink.' },
    ]);
  });
});
