/** A word of the trade that names no quantity. */
export interface TradeWord {
  /** As it stands in a list of words. */
  readonly word: string;
  /** Other forms by which a text may use it; plurals go without saying. */
  readonly forms?: readonly string[];
  /** The only forms in which a text means it, where the word alone may mean something else. */
  readonly onlyAs?: readonly string[];
  /** Forms that a text means only behind a number: those of a unit. */
  readonly behindNumber?: readonly string[];
  /** For a word that has other meanings: beginnings of words, one of which its sentence holds where it means this. */
  readonly beside?: readonly string[];
  readonly meaning: string;
}

/** Words of the trade in plain words of our own. Words of quantities stand in the vocabulary. */
export const tradeWords: readonly TradeWord[] = [
  // Lines and what is done with them
  { word: "sheet", meaning: "line that holds a sail against the wind and sets its angle" },
  { word: "mainsheet", meaning: "sheet of the mainsail" },
  { word: "halyard", meaning: "line that pulls a sail up" },
  { word: "outhaul", meaning: "line that stretches the foot of a sail along the boom" },
  { word: "cunningham", meaning: "line that pulls the front edge of a mainsail down" },
  { word: "vang", meaning: "line or tackle that keeps the boom from rising" },
  { word: "tack line", meaning: "line that holds the lower front corner of a gennaker" },
  { word: "haul", forms: ["hauled", "hauling"], meaning: "to pull a line in" },
  { word: "ease", forms: ["eased", "easing"], meaning: "to let a line out a little, under control" },
  { word: "trim", forms: ["trimmed", "trimming"], meaning: "to set a sail with its lines" },
  { word: "reeve", forms: ["rove", "reeved", "reeving"], meaning: "to lead a line through its blocks" },
  { word: "hoist", forms: ["hoisted", "hoisting"], meaning: "to pull a sail up, or the way up" },
  { word: "drop", onlyAs: ["a drop", "the drop", "drops"], meaning: "the way of a sail down, its halyard let go" },
  { word: "tail", meaning: "the loose end of a line behind the hand or the cleat" },
  {
    word: "lead",
    onlyAs: ["one lead", "many leads"],
    meaning: "a place where a line is turned or guided on its way",
  },
  { word: "station", meaning: "a place where a line meets something: a block, a ring, a cleat" },
  { word: "design load", meaning: "the load that a line is chosen for" },
  { word: "design wind", meaning: "the wind that a line is chosen for" },

  // Blocks, rings and cleats
  { word: "block", meaning: "a wheel, or several, in a frame, over which a line turns" },
  { word: "sheave", meaning: "the grooved wheel of a block" },
  { word: "groove", meaning: "the hollow round a sheave in which the rope lies" },
  { word: "cheek", meaning: "side plate of a block" },
  { word: "pin", meaning: "the axle of a sheave" },
  { word: "ratchet", meaning: "block whose sheave turns one way only: free as you haul, locked as you ease" },
  { word: "tread", meaning: "the face of a locked sheave on which the rope slides" },
  {
    word: "ring",
    beside: "block sheave slid lead led turn angle bend through shackle friction fixed share draw deck pole mm".split(
      " ",
    ),
    meaning: "a smooth eye without moving parts, through which a line slides",
  },
  { word: "lead block", forms: ["lead ring"], meaning: "block that only turns a line to where it is wanted" },
  {
    word: "purchase",
    meaning: "blocks that share a load among several parts of one line, so that the hand pulls less",
  },
  { word: "tackle", meaning: "another word for a purchase" },
  { word: "becket", meaning: "eye on a block in which a line can end" },
  { word: "strop", meaning: "short loop of rope that ties a block or a ring in place" },
  { word: "cleat", meaning: "holder that keeps a line where it is when the hand lets go" },
  { word: "cam cleat", meaning: "cleat with two toothed cams that the pull of the line turns shut" },
  { word: "V cleat", meaning: "cleat with a ridged V groove, without moving parts" },
  { word: "horn cleat", meaning: "cleat with two arms, round which a line is wound" },
  { word: "jammer", meaning: "lever that presses a line hard, for lines that stay under high load" },
  { word: "winch", meaning: "drum that is wound with a handle, to pull a line under high load" },
  { word: "shackle", meaning: "bow that is closed with a pin, to join two parts" },
  { word: "soft shackle", meaning: "shackle made of rope" },
  { word: "lashing", meaning: "thin line wound many times between two eyes" },

  // Rope
  { word: "core", meaning: "the inner part of a rope, which carries the load" },
  { word: "cover", meaning: "the braid round the core, which the hand holds and which takes the wear" },
  { word: "strand", meaning: "one of the bundles of yarn of which a rope or a cover is braided" },
  { word: "yarn", meaning: "a bundle of fibres twisted together" },
  {
    word: "splice",
    forms: ["spliced", "splicing"],
    meaning: "a rope worked back into itself, to make an eye or a join",
  },
  { word: "taper", forms: ["tapered", "tapering"], meaning: "a rope made thinner over part of its length" },
  { word: "chafe", forms: ["chafed", "chafing"], meaning: "wear of a rope where it rubs" },
  { word: "creep", meaning: "slow lengthening of a fibre under load, which stays" },
  { word: "polyester", meaning: "the common fibre of sheets and covers: little stretch, hardy in the sun" },
  {
    word: "HMPE",
    meaning: "high-modulus polyethylene: a light, slippery, very strong fibre that melts early and creeps",
  },
  { word: "aramid", meaning: "a strong fibre that stands heat and minds sharp bends and sunlight" },
  { word: "LCP", meaning: "liquid crystal polymer: a strong fibre that hardly creeps" },
  { word: "PBO", meaning: "a very strong fibre that stands the most heat and loses strength in sunlight" },
  { word: "polyamide", meaning: "a stretchy fibre" },
  { word: "polypropylene", meaning: "a light fibre that floats" },

  // Sails, boat and crew
  { word: "gennaker", meaning: "large, light sail for courses away from the wind" },
  { word: "clew", meaning: "the lower rear corner of a sail, where its sheet pulls" },
  { word: "leech", meaning: "the rear edge of a sail" },
  { word: "luff", meaning: "the front edge of a sail" },
  { word: "boom", meaning: "the pole along the foot of a mainsail" },
  { word: "gooseneck", meaning: "the joint of boom and mast" },
  { word: "mast foot", forms: ["foot of the mast"], meaning: "the lower end of the mast" },
  { word: "bear away", forms: ["bears away"], meaning: "to turn the boat away from the wind" },
  { word: "leeward", meaning: "on the side to which the wind blows" },
  { word: "rigger", meaning: "person whose trade is rope and rig" },
  { word: "bight", meaning: "a loop of line; nobody stands in one" },

  // How a line answers, and how sure a number is
  { word: "half a turn", meaning: "a bend after which a line goes back the way it came" },
  { word: "quarter turn", forms: ["quarter of a turn"], meaning: "a bend by a right angle" },
  { word: "friction", meaning: "force that works against sliding" },
  {
    word: "capstan equation",
    meaning: "the pull that a rope round a post holds grows by the same factor with each further angle",
  },
  { word: "light air", meaning: "hardly any wind" },
  { word: "gust", meaning: "wind above the mean, for seconds" },
  {
    word: "knot of wind",
    behindNumber: ["knots"],
    meaning: "speed of one nautical mile an hour, about half a metre a second",
  },
  { word: "newton", behindNumber: ["N"], meaning: "unit of force: about the weight of a hundred grams" },
  { word: "kgf", behindNumber: ["kgf"], meaning: "kilogram of force: the weight of one kilogram, 9.81 newtons" },
  { word: "hand scale", meaning: "spring or electronic balance with a hook, to read a pull" },
  {
    word: "range",
    meaning: "from what a number may well be at least to what it may well be at most: nine times in ten it lies inside",
  },
  { word: "band", meaning: "a range drawn along a curve" },
  { word: "margin", meaning: "how many times over a line fulfils what is asked of it" },
];
