/**
 * Mass of one ink, g: area × mean coverage × film of a full solid × impressions (handbook, section 4).
 * `areaMm2` is the area that the coverage refers to, `solidGPerM2` the ink on one square metre of solid.
 */
export function inkMassG(
  areaMm2: number,
  coveragePct: number,
  solidGPerM2: number,
  impressions: number,
): number {
  return (areaMm2 / 1e6) * (coveragePct / 100) * solidGPerM2 * impressions;
}
