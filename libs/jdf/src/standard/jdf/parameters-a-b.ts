/** Facts of the open standard: parameter resources, A to B. Notation: ../notation.ts. */
export const parametersAToB = `
Address : Parameter
  NMTOKEN: AddressUsage{1.6-}
  string: City CivicNumber{1.6-} Country PostBox PostalCode Region Street
  CountryCode: CountryCode
  > AddressLine*:TextElement[root]{1.6-} ExtendedAddress?:TextElement
AdhesiveBindingParams : Parameter{-1.0}
  double: PullOutValue FlexValue
  > SpinePreparationParams* GlueApplication* SpineTapingParams*
    CoverApplicationParams*
ApprovalParams : Parameter
  Integer: MinApprovals=1{1.2-}
  > ApprovalPerson*
ApprovalParams/ApprovalPerson
  boolean: Obligated
  ApprovalRole: ApprovalRole=Obligated
  string: ApprovalRoleDetails
  > Contact*&
ApprovalSuccess : Parameter
  > ApprovalDetails*{1.3-} FileSpec?&{-1.2} Contact*&{1.2-1.2}
ApprovalSuccess/ApprovalDetails{1.3-}
  ApprovalState: ApprovalState!
  string: ApprovalStateDetails
  > Contact?& FileSpec?&
Assembly : Parameter{1.2-} no-parts-in-part
  string: AssemblyID{-1.2}
  NMTOKENS: AssemblyIDs{1.3-}
  shortString: JobID
  IntegerList: PhysicalSection{1.3-}
  JogSide: JogSide=Top{1.3-}
  Order: Order=Gathering
  Side1: BindingSide=Left
  > AssemblySection* PageList?&{1.3-} PageAssignedList*{1.3-}
Assembly/AssemblySection{1.2-}
  string: AssemblyID{-1.2}
  NMTOKENS: AssemblyIDs{1.3-}
  Integer: CommonFolds{1.7-}
  shortString: JobID
  Order1: Order{-1.4}
  > AssemblySection*:Assembly/AssemblySection PageAssignedList*:Assembly/PageAssignedList{1.3-}
Assembly/PageAssignedList
  Integer: BroadsheetNumber
  string: LogicalPrinterSection PagePlacementName
  IntegerRangeList: PageListIndex!
AssetListCreationParams : Parameter{1.2-}
  regExp: AssetTypes
  ListPolicy: ListPolicy=All
  > FileSpec*&
BendingParams : Parameter{1.3-}
  string: PunchType
  boolean: Bend=true Punch=true
BinderySignature : Parameter{1.2-}
  NMTOKEN: AlignmentReferenceWeb{1.4-}
  Orientation: BindingOrientation{1.3-} FoldLay{1.4-}
  double: BleedBottom{1.5-} BleedLeft{1.5-} BleedRight{1.5-} BleedTop{1.5-} TrimBottom{1.5-} TrimLeft{1.5-}
    TrimRight{1.5-} TrimTop{1.5-}
  Bottling: Bottling{1.6-}
  string: FoldCatalog
  boolean: OutsideGutter{1.3-} StaggerContinuous{1.3-}
  SpreadType: SpreadType{1.7-}
  DoubleList: StaggerColumns{1.3-} StaggerRows{1.3-}
  XYPair: WebCellAlignment{1.4-} NumberUp=1_1
  BinderySignatureType: BinderySignatureType=Fold{1.3-}
  BindingEdge: BindingEdge=Left
  JogSide: JogEdge=Top{1.3-}
  > DieLayout?&{1.3-} Fold* SignatureCell*
BinderySignature/SignatureCell{1.2-}
  IntegerList: BackFacePages{-1.3} BackPages BackSpread{1.5-} FaceCells{1.4-} FrontFacePages{-1.3}
    FrontPages FrontSpread{1.5-}
  double: BottleAngle{-1.5}
  BottleAxis: BottleAxis{-1.5}
  Orientation1: Orientation=Up
  Integer: SectionIndex=0
  string: StationName=0{1.3-}
BlockPreparationParams : Parameter
  double: Backing Rounding
  TightBacking: TightBacking
  > RegisterRibbon*&
BoxFoldingParams : Parameter{1.3-}
  DoubleList: BlankDimensionsX BlankDimensionsY
  BoxFoldingType: BoxFoldingType
  > BoxFoldAction* GlueLine* BoxApplication*{-1.3}
BoxFoldingParams/BoxApplication
  rectangle: ApplicationArea
  > Component*& GlueLine*
BoxFoldingParams/BoxFoldAction
  XYPair: FoldIndex!
  Action: Action
  > GlueLine*
BoxPackingParams : Parameter
  BoxType: BoxType{1.6-}
  string: BoxTypeDetails{1.6-} Pattern
  Integer: ComponentsPerRow{1.3-} Columns{1.4-} Copies{1.4-} Layers{1.3-} Rows{1.3-}
  ComponentOrientation: ComponentOrientation{1.4-}
  NMTOKEN: FillMaterial
  double: MaxWeight{1.4-}
  IntegerList: Ties{1.3-} UnderLays{1.3-}
BufferParams : Parameter
  duration: MinimumWait
BundlingParams : Parameter{1.2-}
  Integer: Copies
  double: Length
ByteMap : Parameter
  BandOrdering: BandOrdering
  ElementType: ElementType{1.4-}
  Integer: FrameHeight FrameWidth PixelSkip
  boolean: Halftoned Interleaved
  XYPair: Resolution
  > Band* ColorPool?&{1.2-} FileSpec*& PixelColorant*
ByteMap/Band
  URL: Data Mask
  Integer: Height Width
  boolean: WasMarked
ByteMap/PixelColorant
  string: ColorantName!
  Integer: PixelDepth!
`;
