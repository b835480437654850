/** What can hurt a keeper or the bees, said every time the matter comes up. The label, the local law and licensed people decide. */
export const cautions = {
  lifting:
    'Never lift alone what you would not carry up a stair: a full deep box weighs 32 to 41 kg (70 to 90 lb). Weigh one edge, split boxes, lift with two.',
  stings:
    'Veil on, and an adrenaline pen within reach if you react to stings. Say where you are and when you will be back; do not go alone in deep cold.',
  cold: 'Below freezing work short, keep hands and phone warm, and do not break the cluster: lift the lid, not the frames.',
  localRules: 'Local rules on moving hives, combs and bees, on feeding and on registration come first; ask your inspector where in doubt.',
  disease:
    'Combs carry disease. Move none out of a colony whose brood you have not looked at; brood that is sunken, ropy, foul or chalky: close the hive, move nothing, call the inspector. Foulbrood must be reported in most places.',
  treatments: 'Any treatment against mites: the label in your hand and local law decide what, when and how much. This tool names no dose.',
} as const;

export type Caution = keyof typeof cautions;
