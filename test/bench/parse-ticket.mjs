/** A ticket of the wished size, as bytes: partitioned sheets and papers as plants write them. Invented content. */
export function ticketOf(megabytes) {
  const parts = [
    '<?xml version="1.0" encoding="UTF-8"?>\n<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="n1" Type="Product" Status="Waiting" Version="1.4" JobID="J1" JobPartID="p0">\n  <ResourcePool>\n',
  ];
  let length = 0;
  for (let n = 0; length < megabytes * 1024 * 1024; n++) {
    const part = `    <Component ID="c${n}" Class="Quantity" Status="Available" ComponentType="Sheet PartialProduct" Dimensions="595.27 841.88 0" DescriptiveName="Sheet ${n}" PartIDKeys="SignatureName SheetName Side">
      <Component SignatureName="Sig${n}">
        <Component SheetName="Sheet ${n}" Amount="${n * 7}">
          <Component Side="Front"/>
          <Component Side="Back"/>
        </Component>
      </Component>
    </Component>
    <Media ID="m${n}" Class="Consumable" Status="Available" Dimension="1984.25 2834.64" Weight="115" Grade="1" MediaType="Paper"><Comment Name="note">Line of text ${n}, kept as is</Comment></Media>
`;
    parts.push(part);
    length += part.length;
  }
  parts.push('  </ResourcePool>\n</JDF>\n');
  return new TextEncoder().encode(parts.join(''));
}
