/** Facts of the open standard, second generation: product intents. Notation: ../notation.ts. */
export const intents = `
AssemblingIntent : ProductIntent
  IDREF: Container!
  > AssemblyItem* BindIn* BlowIn* StickOn*
BindingIntent : ProductIntent
  NamedColor: BackCoverColor BindingColor CoverColor
  string: BackCoverColorDetails BindingColorDetails CoverColorDetails
  BindingOrder: BindingOrder
  Edge: BindingSide
  BindingType: BindingType!
  ChildRefs: ChildRefs
  > AdhesiveNote? EdgeGluing? HardCoverBinding? LooseBinding? SaddleStitching? SideStitching?
    SoftCoverBinding? Tabs?
ColorIntent : ProductIntent
  > SurfaceColor(0-2)
ContentCheckIntent : ProductIntent
  > PreflightItem* ProofItem*
EmbossingIntent : ProductIntent
  > EmbossingItem+
FoldingIntent : ProductIntent
  FoldCatalog: FoldCatalog
  NMTOKEN: FoldingDetails
  Orientation: Orientation
  > Crease* Fold* Perforate*
HoleMakingIntent : ProductIntent
  > HolePattern+
IntentResource : ProductIntent
LaminatingIntent : ProductIntent
  Side[]: Surface!
  Temperature: Temperature
  NMTOKEN: Texture
  float: Thickness
LayoutIntent : ProductIntent
  float: Bleed
  XYPair: Dimensions NumberUp
  shape: FinishedDimensions
  NMTOKEN: NamedDimensions
  Orientation: Orientation
  int: Pages
  Sides: Sides
  SpreadType: SpreadType
MediaIntent : ProductIntent
  Coating: BackCoating Coating
  ISOPaperSubstrate: BackISOPaperSubstrate ISOPaperSubstrate
  string: Brand MediaColorDetails MediaQuality
  boolean: BuyerSupplied PrePrinted
  NMTOKEN: Flute MediaTypeDetails StockType Texture
  MediaDirection: FluteDirection GrainDirection
  LabColor: LabColorValue
  NamedColor: MediaColor
  MediaType: MediaType!
  EnumOpacity: Opacity
  float: Thickness Weight
  > Certification*
ProductionIntent : ProductIntent
  PrintPreference: PrintPreference
  NMTOKEN: PrintProcess
  > Certification*
ShapeCuttingIntent : ProductIntent
  > ShapeCut+
VariableIntent : ProductIntent
  float: Area
  int: AveragePages MaxPages MinPages NumberOfCopies
  IDREFS: ChildRefs
  NMTOKENS: ColorsUsedBack ColorsUsedFront
  VariableType: VariableType!
  VariableQuality: VariableQuality
`;
