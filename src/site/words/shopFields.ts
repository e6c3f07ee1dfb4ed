/** What each key of a shop file means. A test compares this list with the schemas. */
export const SHOP_FIELDS: Readonly<Record<string, string>> = {
  name: "What the shop calls itself.",
  units: "How numbers without a unit are read: millimetres or inches.",
  machines: "Plate rolls and press brakes, each with the keys of its kind.",
  stock: "Plates in the rack.",
  cutting: "How the blanks of a job are laid on plates.",
  handLiftKg:
    "The shop’s own rule: above this a piece is lifted by machine. kg; or under the key handLift with its unit, as in 50 lb. Left out: 25 kg.",

  "machines[].kind": "Which kind of machine it is.",
  "machines[].name": "What the shop calls the machine.",
  "machines[].arrangement":
    "How the rolls stand to each other. Left out: not known, and no setting is worked out.",
  "machines[].workingWidth": "Usable length of the rolls.",
  "machines[].rating": "The greatest plate it forms at full width as a cylinder, from its plate or handbook.",
  "machines[].rating.thickness": "Thickness of that plate; not what the machine bends over a short length.",
  "machines[].rating.yieldMPa":
    "The yield strength that the rating is for, by the handbook: MPa; or under the key yield with its unit, as in 36 ksi. Left out: not known, and no rating is taken as safe.",
  "machines[].coneRating": "The maker’s own rating for cones; it takes the place of the rule of thumb.",
  "machines[].coneRating.thickness": "Greatest thickness.",
  "machines[].coneRating.slant": "The slant height that goes with it.",
  "machines[].rolls": "Diameters of the rolls.",
  "machines[].rolls.topDiameter": "Of the roll over the plate, by caliper or handbook.",
  "machines[].rolls.pinchDiameter": "Of the roll below it that drives the plate.",
  "machines[].rolls.bendingDiameter":
    "Of the roll that is raised and bends the plate. Left out: no setting is worked out.",
  "machines[].slide": "How the bending roll moves.",
  "machines[].slide.origin":
    "Where its centre stands when it touches the underside of a flat plate, from the centre of the top roll: [towards the bending side, up]. A plate of the rated thickness is meant: up is then minus the sum of half the top roll, that thickness and half the bending roll, and a file that is further off than the thickness is asked about.",
  "machines[].slide.angle": "Direction of its travel above level.",
  "machines[].slide.travel": "How far it travels up from its origin.",
  "machines[].slide.below":
    "How far it goes down from its origin: the lower bearing of a roll that is tilted for a cone may stand so low. Left out: not known, and it has to be found out where a setting asks for it.",
  "machines[].slide.greatestTilt": "How far it can be set out of parallel.",
  "machines[].dropEnd":
    "left or right: the hand at which the drop end is, standing where the plate goes in and looking along its way. It tells which seam edge of a cone leads. Left out: not known, and the sheet says how to see it.",
  "machines[].bearings":
    "From each end of the roll face to the centre of the bearing beyond it: [drop end, fixed end].",
  "machines[].coneAttachment":
    "The hardened stop that the small edge bears and slides on: true, false, or what is known of it. Without one a roll rolls no cones. Left out: not known.",
  "machines[].coneAttachment.fitted": "false: there is none; the same as coneAttachment: false.",
  "machines[].coneAttachment.range":
    "Reach of the stop along the rolls, from the drop end: [nearest, farthest].",
  "machines[].coneAttachment.clearRoom":
    "Clear room beyond the stop before the frame or yoke, the stop at its nearest to the drop end.",
  "machines[].coneAttachment.clearRoomFixedEnd":
    "The same at the fixed end of the rolls, where the stop stands for the second pass; that a stop can be set there is meant too. Left out: not known.",
  "machines[].pinchTrim": "true: the pinch roll can be set out of parallel.",
  "machines[].smallestDiameter": "Smallest inside diameter that it closes.",
  "machines[].smallestRadius": "Smallest radius that it bends to, of the middle of the wall.",
  "machines[].bedLength": "Length of the bed.",
  "machines[].forceKN":
    "Greatest force: kN; or under the key force with its unit, as in 1000 kN, 150 US tons (8.896 kN each) or 150 tonnes (9.807 kN each). Plain tons are US tons in a file in inches; in one in millimetres they are asked about.",
  "machines[].dies":
    "Die openings in the rack, in the units of the file, or each with its own, as in 12 mm. Left out: not known, and force is told for the least opening that the thickness wants.",
  "machines[].throat": "How deep the plate can reach behind the bend line before it meets the frame.",

  "stock[].material": "What the plate is made of: a grade of the table of materials.",
  "stock[].thickness": "Its thickness, a number or a sheet gauge.",
  "stock[].length": "Its length.",
  "stock[].width": "Its width.",
  "stock[].grain":
    "true: blanks are laid as they are drawn or turned by half only, so that element and bend lines run across the plate’s length, which is the way plate is rolled and ground. Left out: blanks may lie at any angle.",

  "cutting.spacing":
    "Least distance between two blanks: the kerf and the bridge of plate that is left beside it. Left out: 8 mm, or the thickness of the plate where that is more (common practice, no source).",
  "cutting.edge":
    "What is left along each edge of the plate for mill edge and clamps. Left out: 10 mm (common practice, no source).",
};
