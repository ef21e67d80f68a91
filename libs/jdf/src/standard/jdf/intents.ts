/** Facts of the open standard: product intents. Notation: ../notation.ts. */
export const intents = `
ArtDeliveryIntent : Intent no-update
  PreflightStatus: PreflightStatus=NotPerformed
  NMTOKENS: ReturnList=None
  > ArtDeliveryDate?:TimeSpan ArtDeliveryDuration?:DurationSpan
    ArtHandling?:EnumerationSpan DeliveryCharge?:EnumerationSpan Method?:NameSpan ReturnMethod?:NameSpan
    ServiceLevel?:StringSpan{1.2-} Transfer?:EnumerationSpan ArtDelivery+ Company?&{-1.0} Contact*&
ArtDeliveryIntent/ArtDelivery
  Integer: Amount
  NMTOKEN: ArtDeliveryType!
  boolean: HasBleeds=false IsTrapped=false
  IntegerRangeList: PageList
  URL: PreflightOutput
  PreflightStatus: PreflightStatus
  > ArtDeliveryDate*:TimeSpan ArtDeliveryDuration*:DurationSpan ArtHandling*:EnumerationSpan
    DeliveryCharge*:EnumerationSpan Method*:NameSpan ReturnMethod*:NameSpan ServiceLevel*:StringSpan
    Transfer*:EnumerationSpan Company*& Component*& Contact*& DigitalMedia*& ExposedMedia*& RunList*&
    ScanParams*& Tool*&
BindingIntent : Intent no-update
  BindingOrder: BindingOrder=Gathering
  > BackCoverColor?:EnumerationSpan
    BackCoverColorDetails*:StringSpan[root]{1.4-} BindingType?:EnumerationSpan BindingColor?:EnumerationSpan
    BindingColorDetails*:StringSpan[root]{1.4-} BindingLength?:EnumerationSpan{-1.5}
    BindingSide?:EnumerationSpan CoverColor?:EnumerationSpan CoverColorDetails*:StringSpan[root]{1.4-}
    AdhesiveBinding?:BindingIntentAdhesiveBinding{-1.0} AdhesiveNote?:BindingIntentAdhesiveNote[root]{1.6-}
    BindList? BookCase?:BindingIntentBookCase{-1.0} ChannelBinding?:BindingIntentChannelBinding
    CoilBinding?:BindingIntentCoilBinding EdgeGluing?:BindingIntentEdgeGluing
    HardCoverBinding?:BindingIntentHardCoverBinding PlasticCombBinding?:BindingIntentPlasticCombBinding
    RingBinding?:BindingIntentRingBinding SaddleStitching?:BindingIntentSaddleStitching
    SideSewing?:BindingIntentSideSewing SideStitching?:BindingIntentSideStitching
    SoftCoverBinding?:BindingIntentSoftCoverBinding Tape?:BindingIntentTape Tabs?:BindingIntentTabs
    ThreadSealing?:BindingIntentThreadSealing ThreadSewing?:BindingIntentThreadSewing
    StripBinding?:BindingIntentStripBinding WireCombBinding?:BindingIntentWireCombBinding
BindingIntent/BindList
  > BindItem*
BindingIntent/BindList/BindItem
  XYPair: ChildFolio ParentFolio!
  matrix: Transformation
  IntegerRangeList: WrapPages
  > BindingType?:EnumerationSpan ChannelBinding?:BindingIntentChannelBinding
    CoilBinding?:BindingIntentCoilBinding EdgeGluing?:BindingIntentEdgeGluing
    HardCoverBinding?:BindingIntentHardCoverBinding PlasticCombBinding?:BindingIntentPlasticCombBinding
    RingBinding?:BindingIntentRingBinding SaddleStitching?:BindingIntentSaddleStitching
    SideSewing?:BindingIntentSideSewing SideStitching?:BindingIntentSideStitching
    SoftCoverBinding?:BindingIntentSoftCoverBinding Tape?:BindingIntentTape Tabs?:BindingIntentTabs
    ThreadSealing?:BindingIntentThreadSealing ThreadSewing?:BindingIntentThreadSewing
    StripBinding?:BindingIntentStripBinding WireCombBinding?:BindingIntentWireCombBinding
ColorIntent : Intent no-update
  Integer: NumColors
  > Certification*[root]{1.7-} Coatings?:StringSpan
    ColorStandard?:NameSpan ColorICCStandard?:StringSpan{1.2-} Coverage?:NumberSpan
    InkManufacturer?:NameSpan{-1.1} ColorPool?& ColorsUsed?:SeparationList
DeliveryIntent : Intent no-update
  string: BuyerAccount
  boolean: Pickup{-1.0} Accepted{-1.2}
  Integer: AdditionalAmount{1.2-1.2}
  Ownership: Ownership=Origin
  > DeliveryCharge?:EnumerationSpan Earliest?:TimeSpan
    EarliestDuration?:DurationSpan Method?:NameSpan Overage?:NumberSpan Required?:TimeSpan
    RequiredDuration?:DurationSpan ReturnMethod?:NameSpan ServiceLevel?:StringSpan{1.2-}
    SurplusHandling?:EnumerationSpan Transfer?:EnumerationSpan Underage?:NumberSpan Company?&{-1.0}
    FileSpec(0-2)&{1.5-} Contact*& DropIntent+ Pricing?{-1.2}
DeliveryIntent/DropIntent
  Integer: AdditionalAmount{1.2-1.2}
  string: BuyerAccount{1.2-} DropID{1.5-}
  boolean: Pickup{-1.0}
  > Earliest?:TimeSpan EarliestDuration?:DurationSpan Method?:NameSpan Required?:TimeSpan
    RequiredDuration?:DurationSpan ReturnMethod?:NameSpan ServiceLevel?:StringSpan{1.2-}
    SurplusHandling?:EnumerationSpan Transfer?:EnumerationSpan Company?&{-1.0} Contact*& FileSpec?&{1.6-}
    DropItemIntent+ Pricing?:DeliveryIntent/Pricing{-1.2}
DeliveryIntent/DropIntent/DropItemIntent
  Integer: AdditionalAmount{-1.2} Amount OrderedAmount
  string: DropID{1.5-} Proof Unit{-1.5}
  > Component?& ExposedMedia?& Ink?& Media?& Pallet?& RegisterRibbon?& Strap?& Bundle?& DigitalMedia?&
    RollStand?& Tool?& Pricing?:DeliveryIntent/Pricing{-1.2}
DeliveryIntent/Pricing{-1.2}
  double: AdditionalPrice Price
  NMTOKEN: Currency
  boolean: HasPrice=true
  string: Item
  > Payment?:DeliveryIntent/Payment{-1.2} Pricing*:DeliveryIntent/Pricing
DeliveryIntent/Payment
  > PayTerm*:Comment CreditCard*:DeliveryIntent/Payment//CreditCard
DeliveryIntent/Payment//CreditCard
  string: Authorization
  gYearMonth: AuthorizationExpires Expires!
  NMTOKEN: Number! Type!
EmbossingIntent : Intent no-update
  > EmbossingItem+
EmbossingIntent/EmbossingItem
  Face: Location
  string: Separation
  NMTOKEN: ToolName
  > Direction*:EnumerationSpan EdgeAngle*:NumberSpan EdgeShape*:EnumerationSpan EmbossingType*:StringSpan
    FoilColor*:EnumerationSpan FoilColorDetails*:StringSpan Height*:NumberSpan ImageSize*:XYPairSpan
    Level*:EnumerationSpan Position*:XYPairSpan
FoldingIntent : Intent no-update
  XYPair: Folds{-1.0}
  string: FoldingDetails{1.6-}
  > FoldingCatalog:NameSpan Fold*
    Orientation:EnumerationSpan[root]{1.6-}
HoleMakingIntent : Intent no-update
  XYPair: Extent{1.2-}
  HoleReferenceEdge: HoleReferenceEdge=Left
  > HoleType:StringSpan HoleList?
InsertingIntent : Intent no-update
  > GlueType?:EnumerationSpan InsertList Method?:EnumerationSpan
InsertingIntent/InsertList
  > Insert*
InsertingIntent/InsertList/Insert
  IntegerRangeList: Folio! WrapPages
  XYPair: SheetOffset
  matrix: Transformation
  > GlueType*:EnumerationSpan Method*:EnumerationSpan GlueLine*
LaminatingIntent : Intent no-update
  > Laminated?:OptionSpan{-1.0} Temperature:EnumerationSpan
    Surface?:EnumerationSpan Texture?:NameSpan{1.3-} Thickness?:NumberSpan
LayoutIntent : Intent no-update
  PortraitOrLandscape: FinishedPageOrientation{-1.0}
  Orientation: Orientation{1.6-}
  RotatePolicy: RotatePolicy{1.2-}
  SpreadType: SpreadType{1.6-}
  Sides: Sides
  FolioCount: FolioCount=Booklet
  XYPair: NumberUp=1_1
  > Bleed*:NumberSpan[root]{1.5-} Dimensions?:XYPairSpan
    FinishedDimensions?:ShapeSpan FinishedGrainDirection?:EnumerationSpan{1.2-1.4} Pages?:IntegerSpan
    PageVariance?:IntegerSpan Layout?& SizePolicy?:EnumerationSpan{1.2-}
MediaIntent : Intent no-update inline
  Integer: MediaSetCount
  NMTOKEN: UserMediaType{-1.5}
  boolean: PrePrinted=false
  > BackCoatings?:EnumerationSpan Brightness?:NumberSpan
    BuyerSupplied?:OptionSpan Certification*{1.6-} Dimensions?:XYPairSpan{-1.1} Flute?:NameSpan[root]{1.4-}
    FluteDirection?:EnumerationSpan[root]{1.4-} FrontCoatings?:EnumerationSpan Grade?:IntegerSpan{-1.5}
    GrainDirection?:EnumerationSpan{1.2-} HoleCount?:IntegerSpan{-1.0} HoleType?:StringSpan
    ISOPaperSubstrate?:EnumerationSpan[root,inline]{1.5-} MediaColor?:EnumerationSpan
    MediaColorDetails?:StringSpan{1.2-} MediaQuality?:StringSpan[root]{1.4-} MediaType?:EnumerationSpan
    MediaTypeDetails?:NameSpan{1.3-} MediaUnit?:EnumerationSpan{-1.1} Opacity?:EnumerationSpan
    OpacityLevel?:NumberSpan{1.2-} Recycled?:OptionSpan{-1.1} RecycledPercentage?:NumberSpan{1.2-}
    StockBrand?:StringSpan StockType?:NameSpan Texture?:NameSpan Thickness?:NumberSpan
    USWeight?:NumberSpan{-1.1} Weight?:NumberSpan MediaLayers?[root]{1.4-}
NumberingIntent : Intent no-update
  > ColorName?:EnumerationSpan
    ColorNameDetails*:StringSpan[root]{1.4-} ColorPool?& NumberItem+
NumberingIntent/NumberItem
  string: StartValue=1
  Integer: Step=1
  > ColorName*:EnumerationSpan ColorNameDetails*:StringSpan XPosition*:NumberSpan YPosition*:NumberSpan
    Orientation*:NumberSpan SeparationSpec*
PackingIntent : Intent no-update
  > BoxedQuantity?:IntegerSpan BoxShape?:ShapeSpan
    CartonQuantity?:IntegerSpan CartonShape?:ShapeSpan CartonMaxWeight?:NumberSpan
    CartonStrength?:NumberSpan FoldingCatalog?:NameSpan PalletCornerBoards?:NameSpan{1.3-}
    PalletQuantity?:IntegerSpan PalletSize?:XYPairSpan PalletMaxHeight?:NumberSpan
    PalletMaxWeight?:NumberSpan PalletType?:NameSpan PalletWrapping?:NameSpan WrappedQuantity?:IntegerSpan
    WrappingMaterial?:NameSpan
ProductionIntent : Intent no-parts-in-root no-update no-parts-in-part no-resource-generic
  > Certification*[root]{1.7-} PrintPreference?:EnumerationSpan PrintProcess?:NameSpan[root] any:Resource
    any:ResourceRef PrintProcess?:EnumerationSpan[part]
ProofingIntent : Intent no-update
  > ProofItem* PreflightItem*[root]{1.6-}
    PreflightItemItem*:ProofingIntent/PreflightItem[part]
ProofingIntent/ProofItem
  boolean: Contract=false
  IntegerRangeList: PageIndex
  string: ProofName
  URL: ProofTarget
  > Amount*:IntegerSpan BrandName*:StringSpan ColorType*:EnumerationSpan HalfTone*:OptionSpan
    ImageStrategy*:EnumerationSpan Technology*:NameSpan ProofType*:EnumerationSpan ApprovalParams*&
    FileSpec* SeparationSpec*
ProofingIntent/PreflightItem
  PreflightLevel: PreflightLevel
PublishingIntent : Intent{1.3-} no-parts-in-root no-update no-parts-in-part
  IDREFS: ContentDataRefs{1.4-}
  > IssueDate:TimeSpan IssueName:StringSpan IssueType:NameSpan
    Circulation?:IntegerSpan ContentList?&[root]{1.4-}
ScreeningIntent : Intent{1.2-} no-update
  > DotSize?:NumberSpan Frequency?:NumberSpan
    FrequencySelection?:EnumerationSpan ScreeningType?:EnumerationSpan
ShapeCuttingIntent : Intent no-update
  > ShapeCut*
ShapeCuttingIntent/ShapeCut
  rectangle: CutBox
  boolean: CutOut=false
  PDFPath: CutPath
  IntegerRangeList: Pages
  string: ShapeTypeDetails
  > Material*:StringSpan CutType*:EnumerationSpan CutDepth*:EnumerationSpan ShapeDepth*:NumberSpan
    ShapeType*:EnumerationSpan TeethPerDimension*:NumberSpan
SizeIntent : Intent{-1.0} no-update
  SizeIntentType: Type=Folded
  > Dimensions:XYPairSpan Pages?:IntegerSpan
VariableIntent : Intent{1.6-} no-update
  > Area?:NumberSpan AveragePages?:IntegerSpan maxPages*:IntegerSpan
    MinPages?:IntegerSpan NumberOfCopies?:IntegerSpan VariableType?:EnumerationSpan
    VariableQuality?:EnumerationSpan ColorsUsed?:SeparationList
`;
