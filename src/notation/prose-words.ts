/**
 * Everyday words that stand around the work without changing it: markers, stuffing, eyes, advice.
 * Words left over from the notation are a remark when all of them are known here or are notation;
 * a single strange word makes them unread, so that nothing is passed over in silence.
 */
export const PROSE_WORDS: string = `
 this that these those it its is are was were be been being will would can could may might must shall
 should has had having get gets getting got go going goes come comes coming went do did doing done
 he she they them their there here his her my me mine our us your yours i im ive ill youve youre youd
 if when whenever where wherever while until before after during since because so but however although
 though than too also very really quite rather just only still yet again already always never often
 sometimes maybe perhaps please thanks thank note notes remember careful carefully sure check
 see photo photos picture pictures image images video tutorial below above left right
 place placing placed put putting move moving moved mark marks marking marked marker markers pin pins
 stuff stuffing stuffed stuffs fill filling fiberfill fibrefill polyfill firmly lightly tightly loosely
 well slightly fully softly gently securely neatly
 eye eyes safety nose mouth ear ears arm arms leg legs head body tail neck face foot feet hand hands
 wing wings horn horns beak hair hat brim cheek belly chest back front inside outside
 sew sewing sewn sew stitch needle weave weaving woven tail tails long leave leaving left cut cutting
 essentially basically trim thread embroider attach attached attaching insert inserting inserted
 pull pulling pulled tight tighten tightening snug loose close closed closing hole shut gap gaps
 keep keeping kept hold holding held using use used uses instead
 make makes making made create creates creating forms form forming formed
 start starts starting started begin begins beginning began end ends ending ended finish finishes
 finishing finished complete completed completes continue continues continuing
 first second third next last previous new old other others another both either neither same different
 each every all any some none no not dont doesnt didnt wont cant isnt arent shouldnt
 one ones two three four five six seven eight nine ten
 row rows round rounds rnd rnds stitch stitches st sts chain chains ch space spaces loop loops
 side sides edge edges corner corners center centre middle top bottom base way ways part parts piece
 pieces shape shapes shaping section sections pattern patterns repeat repeats work works working worked
 right wrong facing face up down out in into on onto of off over under through to from for with without
 by at as and or the a an then now up along away around across between behind beside toward towards
 against about near like until till per
 total number numbers count counts counting counted many much more less fewer most extra
 hook hooks needle size sizes yarn yarns color colors colour colours strand strands thread skein ball
 gauge tension measure measures measuring measured length width height long wide tall inch inches cm mm
 desired required wish want like prefer need needed needs necessary optional
 increase increases increasing increased decrease decreases decreasing decreased
 look looks looking looked should seem seems appear show shows shown showing
 time times once twice step steps point points instructions instruction direction directions written
 think know let lets try take taken taking give gives find found help helps helping
 turn turning turned flip fold folded folding rotate press block blocking steam wash flat flatten
 nice neat easy easier hard little big bigger small smaller large larger short shorter longer wider
 narrower even evenly odd equal equally exactly approximately about half quarter almost
 fasten fastened off secure invisible invisibly knot tie
 remove removing drop pick carry carrying hide hiding show
 what which who whose why how
 petal petals leaf leaves flower flowers center tip tips ring circle square triangle oval heart
 manner fashion base neckline armhole sleeve shoulder waist strap straps handle handles button buttons buttonhole
 ribbing rib border edging flap opening bag toe heel cuff thumb crown
 unworked free remaining rest skip skipped missed
 be sure not twist twisting curl curls ruffle cup cups
 joined joining join connected connecting
 counts count st note does also both way now ready
 leg arm wing first good great perfect beautiful love enjoy happy
 reference easy-reading optional tip hint important
 don't you'll it's that's here's there's won't can't
 wire pipe cleaner glue cardboard bead beads wires felt ribbon elastic
 row's round's stitch's
 increases decreases worked stay stays staying remain remains remaining become becomes becoming
 begins changed changes changing change without break
 following follow followed follows according accordingly
 added add adding adds
 visible hidden behind forward forwards backward backwards inward inwards outward outwards
 marks move moves upward upwards downward downwards horizontally vertically sideways
 later earlier next ones side's beginning's
 pieces both apart together separately individually
 etc eg ie ok okay yes
 day life water photo pic pics pictured
`;
