/** The same of so many megabytes, as bytes. */
export const ticketOf = (megabytes) => new TextEncoder().encode(largeTicket(megabytes * 1024 * 1024));

/** A sound ticket of about so many bytes: a product with sheets, plates, ink profiles and components, and its story. */
export function largeTicket(bytes) {
  const sheets = Math.max(1, Math.round(bytes / 2300));
  const names = Array.from({ length: sheets }, (_, i) => `Sheet-${i + 1}`);
  const separations = ['Cyan', 'Magenta', 'Yellow', 'Black'];
  const sides = (name, leaf) =>
    ['Front', 'Back']
      .map(
        (side) => `<${name} Side="${side}">${separations.map((ink) => leaf(ink, side)).join('')}</${name}>`,
      )
      .join('\n');
  const plates = names
    .map(
      (sheet) =>
        `<ExposedMedia SheetName="${sheet}">${sides('ExposedMedia', (ink) => `<ExposedMedia Separation="${ink}" Status="Available" ProductID="P-${sheet}-${ink}"/>`)}</ExposedMedia>`,
    )
    .join('\n');
  let seed = 1;
  const zones = () =>
    Array.from({ length: 16 }, () => {
      seed = (seed * 16_807) % 2_147_483_647;
      return (seed / 2_147_483_647).toFixed(2);
    }).join(' ');
  const profiles = names
    .map(
      (sheet) =>
        `<InkZoneProfile SheetName="${sheet}">${sides('InkZoneProfile', (ink) => `<InkZoneProfile Separation="${ink}" ZoneSettingsX="${zones()}"/>`)}</InkZoneProfile>`,
    )
    .join('\n');
  const phases = names
    .map((sheet, i) => {
      const at = (minute) =>
        new Date(Date.UTC(2026, 0, 1, 6, i * 10 + minute)).toISOString().replace('.000Z', 'Z');
      return `<PhaseTime TimeStamp="${at(9)}" Start="${at(0)}" End="${at(9)}" Status="InProgress"><Part SheetName="${sheet}"/><ComponentLink rRef="sheets" Usage="Output" Amount="${1000 + i}"/></PhaseTime>`;
    })
    .join('\n');
  return `<?xml version="1.0" encoding="UTF-8"?>
<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xsi:type="ConventionalPrinting" ID="node" Type="ConventionalPrinting" JobID="J-1" JobPartID="P-1" Status="InProgress" Version="1.7">
<AuditPool>
<Created TimeStamp="2026-01-01T05:00:00Z" AgentName="bench"/>
${phases}
</AuditPool>
<ResourcePool>
<Media ID="paper" Class="Consumable" Status="Available" MediaType="Paper" Dimension="2834.65 1984.25" Weight="115" Thickness="90"/>
<ConventionalPrintingParams ID="params" Class="Parameter" Status="Available" WorkStyle="WorkAndBack" PrintingType="SheetFed"/>
<ExposedMedia ID="plates" Class="Handling" Status="Available" PartIDKeys="SheetName Side Separation"><Media MediaType="Plate"/>
${plates}
</ExposedMedia>
<InkZoneProfile ID="profiles" Class="Parameter" Status="Available" PartIDKeys="SheetName Side Separation" ZoneWidth="92.13" ZoneSettingsX="0">
${profiles}
</InkZoneProfile>
<Component ID="sheets" Class="Quantity" Status="Unavailable" ComponentType="Sheet" PartIDKeys="SheetName">
${names.map((sheet) => `<Component SheetName="${sheet}" Amount="1000"/>`).join('\n')}
</Component>
</ResourcePool>
<ResourceLinkPool>
<MediaLink rRef="paper" Usage="Input" Amount="1000"/>
<ConventionalPrintingParamsLink rRef="params" Usage="Input"/>
<ExposedMediaLink rRef="plates" Usage="Input" ProcessUsage="Plate"/>
<InkZoneProfileLink rRef="profiles" Usage="Input"/>
<ComponentLink rRef="sheets" Usage="Output" Amount="1000"/>
</ResourceLinkPool>
</JDF>
`;
}
