/** Facts of the open standard: what every resource of a class has, as root, as part and inline. Notation: ../notation.ts. */
export const forms = `
Element : nothing no-generic
  NMTOKENS: BestEffortExceptions MustHonorExceptions OperatorInterventionExceptions
  URL: CommentURL
  longString: DescriptiveName
  SettingsPolicy: SettingsPolicy{1.2-}
Resource.root no-generic
  string: AgentName AgentVersion Author CatalogDetails
  shortString: CatalogID PipeID ProductID
  dateTime: Expires
  ID: ID!
  boolean: Locked=false
  PartUsage: PartUsage=Explicit
  NMTOKEN: PipeProtocol UpdateID
  URL: PipeURL
  IDREFS: rRefs
  Integer: SkipIndex
  NMTOKENS: SpawnIDs
  SpawnStatus: SpawnStatus=NotSpawned
  ResourceStatus: Status!
  PartitionKeys[]: PartIDKeys PipePartIDKeys
Resource.inline no-generic
  ID: ID{-1.1}
  NMTOKEN: UpdateID{-1.2}
  shortString: ProductID CatalogID
  string: AgentName AgentVersion Author CatalogDetails
  dateTime: Expires
  ResourceStatus: Status
Parameter.inline : Resource.inline no-generic
  boolean: NoOp
  NMTOKEN: Class==Parameter
Resource.part no-generic
  string: AgentName AgentVersion Author CatalogDetails Separation SheetName SignatureName StationName
  shortString: CatalogID PipeID ProductID
  dateTime: Expires
  ID: ID
  boolean: Locked
  NMTOKEN: PipeProtocol UpdateID BinderySignatureName BlockName Condition DeliveryUnit0 DeliveryUnit1
    DeliveryUnit2 DeliveryUnit3 DeliveryUnit4 DeliveryUnit5 DeliveryUnit6 DeliveryUnit7 DeliveryUnit8
    DeliveryUnit9 Edition EditionVersion Location LotID Option PlateLayout PreflightRule PrintCondition
    Product ProductPart RibbonName Run RunSet SubRun WebName WebProduct WebSetup
  URL: PipeURL
  IDREFS: rRefs
  NMTOKENS: SpawnIDs ItemNames PartVersion
  Integer: SkipIndex FountainNumber RunPage
  SpawnStatus: SpawnStatus
  ResourceStatus: Status
  IntegerRangeList: BinderySignaturePaginationIndex BundleItemIndex CellIndex DocCopies DocIndex DocRunIndex
    DocSheetIndex LayerIDs PageNumber RunIndex RunPageRange SectionIndex SetCopies SetDocIndex SetRunIndex
    SetSheetIndex SetIndex SheetIndex
  NameRangeList: DocTags Metadata0 Metadata1 Metadata2 Metadata3 Metadata4 Metadata5 Metadata6 Metadata7
    Metadata8 Metadata9 PageTags RunTags SetTags
  PreviewType: PreviewType
  Side: Side
  XYPair: TileID
Physical.root : Resource.root no-generic
  string: AlternateBrand Brand Manufacturer
  double: Amount AmountProduced AmountRequired GrossWeight ResourceWeight
  shortString: BatchID
  LotControl: LotControl
  NMTOKEN: Unit
Physical.part : Resource.part no-generic
  string: AlternateBrand Brand Manufacturer
  double: Amount AmountProduced AmountRequired GrossWeight ResourceWeight
  shortString: BatchID
  LotControl: LotControl
  NMTOKEN: Unit
Physical.inline : Resource.inline no-generic
  string: AlternateBrand Brand Manufacturer
  double: Amount AmountProduced AmountRequired GrossWeight ResourceWeight
  shortString: BatchID
  LotControl: LotControl
  NMTOKEN: Unit
Consumable.root : Physical.root no-generic
  NMTOKEN: Class!==Consumable
Consumable.part : Physical.part no-generic
Consumable.inline : Physical.inline no-generic
  NMTOKEN: Class==Consumable
Handling.root : Physical.root no-generic
  NMTOKEN: Class!==Handling
Handling.part : Physical.part no-generic
Handling.inline : Physical.inline no-generic
  NMTOKEN: Class==Handling
Implementation.root : Resource.root no-generic
  NMTOKEN: Class!==Implementation
Implementation.part : Resource.part no-generic
Implementation.inline : Resource.inline no-generic
  NMTOKEN: Class==Implementation
Intent.root : Resource.root no-generic
  NMTOKEN: Class!==Intent
Intent.part : Resource.part no-generic
Intent.inline : Resource.inline no-generic
  NMTOKEN: Class==Intent
Parameter.root : Resource.root no-generic
  ResourceClass: Class!==Parameter
  boolean: NoOp=false
Parameter.part : Resource.part no-generic
  boolean: NoOp
PlaceHolder.root : Resource.root{-1.4} no-generic
  NMTOKEN: Class!==PlaceHolder
PlaceHolder.part : Resource.part no-generic
PlaceHolder.inline : Resource.inline no-generic
  NMTOKEN: Class==PlaceHolder
Quantity.root : Physical.root no-generic
  NMTOKEN: Class!==Quantity
Quantity.part : Physical.part no-generic
`;
