/** Facts of the open standard: what a device can do, tests and preflight rules. Notation: ../notation.ts. */
export const capabilities = `
DeviceCap : Resource.inline
  CombinedMethod[]: CombinedMethod=None
  ExecutionPolicy: ExecutionPolicy=AllFound{1.2-}
  NMTOKENS: GenericAttributes OptionalCombinedTypes{-1.1} Types
  languages: Lang{1.2-}
  NMTOKEN: Type{-1.1}
  regExp: TypeExpression{1.2-}
  TypeOrder: TypeOrder{-1.1}
  > ActionPool?{1.2-} DevCapPool?{1.3-} DevCaps* DisplayGroupPool?{1.2-} FeaturePool?{1.2-} MacroPool?{1.2-}
    ModulePool?{1.3-} Performance* TestPool?{1.2-} any:AbstractStates
DeviceCap/Performance
  double: AverageAmount MaxAmount MinAmount
  duration: AverageCleanup AverageSetup MaxCleanup MaxSetup MinCleanup MinSetup
  NMTOKEN: Name{-1.1} Unit
  IDREF: DevCapsRef{1.2-}
DeviceCap/DevCaps
  Availability: Availability=Installed{1.2-}
  Context: Context=Resource{1.2-}
  IDREFS: DevCapRef{1.3-} ModuleRefs{1.3-}
  URI: DevNS=http://www.CIP4.org/JDFSchema_1_1
  ID: ID{1.2-}
  Usage: LinkUsage{1.2-}
  NMTOKEN: Name! ProcessUsage{1.3-} ResourceUsage{1.3-}
  boolean: Required=false{1.2-}
  NMTOKENS: ResourceUpdate{-1.2} Types{-1.1}
  IntegerRangeList: TypeOccurrenceNum{1.2-}
  > DevCap* Loc*{1.2-}
DevCap
  Availability: Availability{1.2-}
  IDREFS: DevCapRefs{1.3-} ModuleRefs{1.3-}
  URI: DevNS=http://www.CIP4.org/JDFSchema_1_1
  ID: ID{1.3-}
  Integer: MaxOccurs=1 MinOccurs=1
  NMTOKEN: Name ResourceUsage{1.3-}
  > DevCap* Loc*{1.2-} any:AbstractStates
DevCapState no-generic
  Availability: Availability
  IDREFS: ActionRefs MacroRefs
  IDREF: DependentMacroRef
  URI: DevNS=http://www.CIP4.org/JDFSchema_1_1
  boolean: Editable=true HasDefault=true Required Span
  ID: ID
  ListType: ListType=SingleValue
  Integer: MaxOccurs=1 MinOccurs=1
  NMTOKEN: Name
  UserDisplay: UserDisplay=Display
AbstractState no-generic
  Availability: Availability
  IDREFS: ActionRefs MacroRefs ModuleRefs
  IDREF: DependentMacroRef
  URI: DevNS=http://www.CIP4.org/JDFSchema_1_1
  boolean: Editable=true HasDefault=true Required Span
  ID: ID
  ListType: ListType=SingleValue
  Integer: MaxOccurs=1 MinOccurs=1
  NMTOKEN: Name
  UserDisplay: UserDisplay=Display
BooleanState : AbstractState
  boolean[]: AllowedValueList PresentValueList
  boolean: CurrentValue DefaultValue
  > Loc* ValueLoc*{1.2-}
DateTimeState : AbstractState{1.2-}
  dateTime: DefaultValue CurrentValue
  DurationRangeList: AllowedValueDurationList PresentValueDurationList
  DateTimeRangeList: AllowedValueList PresentValueList
  > Loc* ValueLoc*
DurationState : AbstractState{1.2-}
  duration: DefaultValue CurrentValue
  DurationRangeList: AllowedValueList PresentValueList
  > Loc* ValueLoc*
EnumerationState : AbstractState
  NMTOKEN: DefaultValue CurrentValue
  NMTOKENS: AllowedValueList PresentValueList
  > Loc* ValueLoc*{1.2-}
IntegerState : AbstractState
  Integer: DefaultValue CurrentValue AllowedValueMax{-1.1} AllowedValueMin{-1.1} PresentValueMax{-1.1}
    PresentValueMin{-1.1}
  IntegerRangeList: AllowedValueList PresentValueList
  XYPair: AllowedValueMod{1.2-} PresentValueMod{1.2-}
  NMTOKEN: UnitType{1.2-}
  > Loc* ValueLoc*{1.2-}
MatrixState/Value
  matrix: AllowedValue! PresentValue
  ValueUsage: ValueUsage
  > Loc*
MatrixState : AbstractState
  matrix: DefaultValue CurrentValue
  double: AllowedRotateMod PresentRotateMod{1.2-}
  MatrixShift_: AllowedShift{1.2-} PresentShift{1.2-}
  Orientation[]: AllowedTransforms{1.2-} PresentTransforms{1.2-}
  > Loc* Value*
NameState : AbstractState
  NMTOKEN: DefaultValue CurrentValue
  regExp: AllowedRegExp{1.2-} PresentRegExp{1.2-}
  NMTOKENS: AllowedValueList PresentValueList
  > Loc* ValueLoc*{1.2-}
NumberState : AbstractState
  double: DefaultValue CurrentValue AllowedValueMax{-1.1} AllowedValueMin{-1.1} PresentValueMax{-1.1}
    PresentValueMin{-1.1}
  DoubleRangeList: AllowedValueList PresentValueList
  XYPair: AllowedValueMod{1.2-} PresentValueMod{1.2-}
  NMTOKEN: UnitType{1.2-}
  > Loc* ValueLoc*{1.2-}
PDFPathState/Value
  PDFPath: AllowedValue!
  ValueUsage: ValueUsage
  > Loc*
PDFPathState : AbstractState{1.2-}
  PDFPath: DefaultValue CurrentValue
  IntegerRange: AllowedLength PresentLength
  > Loc* Value*
RectangleState : AbstractState{1.2-}
  rectangle: DefaultValue CurrentValue
  XYRelation: AllowedHWRelation PresentHWRelation
  RectangleRangeList: AllowedValueList PresentValueList
  > Loc* ValueLoc*
ShapeState : AbstractState
  shape: DefaultValue CurrentValue AllowedValueMax{-1.1} AllowedValueMin{-1.1} PresentValueMax{-1.1}
    PresentValueMin{-1.1}
  ShapeRangeList: AllowedValueList PresentValueList
  DoubleRangeList: AllowedX{1.2-} AllowedY{1.2-} AllowedZ{1.2-} PresentX{1.2-} PresentY{1.2-} PresentZ{1.2-}
  > Loc* ValueLoc*{1.2-}
StringState/Value
  string: AllowedValue! PresentValue{-1.1}
  ValueUsage: ValueUsage{1.2-}
  > Loc*{1.2-}
StringState : AbstractState
  string: DefaultValue CurrentValue
  IntegerRange: AllowedLength{1.2-} PresentLength{1.2-}
  regExp: AllowedRegExp{1.2-} PresentRegExp{1.2-}
  > Loc* Value*
XYPairState : AbstractState
  XYPair: DefaultValue CurrentValue AllowedValueMax{-1.1} AllowedValueMin{-1.1} PresentValueMax{-1.1}
    PresentValueMin{-1.1}
  XYPairRangeList: AllowedValueList PresentValueList
  XYRelation: AllowedXYRelation{1.2-} PresentXYRelation{1.2-}
  NMTOKEN: UnitType{1.2-}
  > Loc* ValueLoc*{1.2-}
ValueLoc
  string: Value!
  > Loc*
Loc
  string: HelpText ShortValue Value
  language: Lang
DisplayGroup
  IDREFS: rRefs!
  > Loc*
DisplayGroupPool{1.2-}
  > DisplayGroup*
ActionPool{1.2-}
  > Action*
DevCapPool{1.3-}
  > DevCap+
ModulePool{1.3-}
  > ModuleCap+
ModuleCap{1.3-}
  Availability: Availability
  ID: ID!
  Integer: ModuleIndex!
FeaturePool{1.2-}
  > any:AbstractStates
MacroPool{1.2-}
  > macro*
TestPool{1.2-}
  > Test*:Test
BasicPreflightTest
  NMTOKENS: Classes{1.4-}
  NMTOKEN: ClassName{1.4-} Name!
  URI: DevNS=http://www.CIP4.org/JDFSchema_1_1
  ListType: ListType=SingleValue
  Integer: MaxOccurs=1 MinOccurs=1
  > PreflightArgument?
PreflightArgument
  > BoxArgument*:Preflight/BoxArgument BoxToBoxDifference*:Preflight/BoxToBoxDifference
Preflight/BoxArgument
  Box: Box!
  MirrorMargins: MirrorMargins
  rectangle: Offset
  boolean: Overlap=false
Preflight/BoxToBoxDifference
  Box: FromBox ToBox
macro
  ID: ID!
  > choice* set* call*
choice{1.2-}
  > when+ otherwise?
when{1.2-}
  > any:AbstractTerms set+
otherwise{1.2-}
  > set+
set/FeatureAttribute
  string: CurrentValue
  boolean: Editable
  UserDisplay: UserDisplay
set
  IDREF: rRef!{1.2-}
  > FeatureAttribute?{1.2-}
call
  IDREF: rRef!
Action
  Severity: Severity=Error
  ID: ID!
  IDREF: TestRef!
  > Loc* PreflightAction*
PreflightAction
  SetSplitBy: SetSplitBy=RunList
  IDREF: SetRef
AbstractTerm no-generic
TestRef : AbstractTerm
  IDREF: rRef!
AbstractEvaluation : AbstractTerm no-generic abstract
  XPath: Path
  IDREF: rRef
BooleanEvaluation : AbstractEvaluation
  booleanList: ValueList
  > BasicPreflightTest*
DateTimeEvaluation : AbstractEvaluation
  DurationRangeList: ValueDurationList
  DateTimeRangeList: ValueList
  > BasicPreflightTest*
DurationEvaluation : AbstractEvaluation
  DurationRangeList: ValueRange
  > BasicPreflightTest*
EnumerationEvaluation : AbstractEvaluation
  NMTOKENS: ValueList
  > BasicPreflightTest*
IntegerEvaluation : AbstractEvaluation
  IntegerRangeList: ValueList
  XYPair: ValueMod
  > BasicPreflightTest*
IsPresentEvaluation : AbstractEvaluation
  > BasicPreflightTest*
MatrixEvaluation/Value
  matrix: Value!
MatrixEvaluation : AbstractEvaluation
  double: RotateMod
  MatrixShift_: Shift
  XYPair: Tolerance=0_0
  Orientation[]: Transforms
  > BasicPreflightTest* Value*
NameEvaluation : AbstractEvaluation
  regExp: RegExp!
  NMTOKENS: ValueList
  > BasicPreflightTest*
NumberEvaluation : AbstractEvaluation
  XYPair: Tolerance=0_0 ValueMod
  DoubleRangeList: ValueList
  > BasicPreflightTest*
PDFPathEvaluation/Value
  PDFPath: Value!
PDFPathEvaluation : AbstractEvaluation
  IntegerRange: Length
  > BasicPreflightTest* Value*
RectangleEvaluation : AbstractEvaluation
  XYRelation: HWRelation
  XYPair: Tolerance=0_0
  RectangleRangeList: ValueList
  > BasicPreflightTest*
ShapeEvaluation : AbstractEvaluation
  XYPair: Tolerance=0_0
  ShapeRangeList: ValueList
  DoubleRangeList: X Y Z
  > BasicPreflightTest*
StringEvaluation/Value
  string: Value!
StringEvaluation : AbstractEvaluation
  IntegerRange: Length
  regExp: RegExp
  > BasicPreflightTest* Value*
XYPairEvaluation : AbstractEvaluation
  XYPair: Tolerance=0_0
  XYPairRangeList: ValueList
  XYRelation: XYRelation
  > BasicPreflightTest*
and : AbstractTerm
  > any:AbstractTerms
or : AbstractTerm
  > any:AbstractTerms
not : AbstractTerm
  > any:AbstractTerms
xor : AbstractTerm
  > any:AbstractTerms
Test
  ID: ID!
  > any:AbstractTerms
`;
