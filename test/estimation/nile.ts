/**
 * Annual flow of the Nile at Aswan, 1871 to 1970, 10^8 m³: R `datasets::Nile`, public domain. The sum
 * is 91935.
 */
export const nile: readonly number[] = [
  1120, 1160, 963, 1210, 1160, 1160, 813, 1230, 1370, 1140, 995, 935, 1110, 994, 1020, 960, 1180,
  799, 958, 1140, 1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774, 840, 874, 694, 940, 833, 701,
  916, 692, 1020, 1050, 969, 831, 726, 456, 824, 702, 1120, 1100, 832, 764, 821, 768, 845, 864, 862,
  698, 845, 744, 796, 1040, 759, 781, 865, 845, 944, 984, 897, 822, 1010, 771, 676, 649, 846, 812,
  742, 801, 1040, 860, 874, 848, 890, 744, 749, 838, 1050, 918, 986, 797, 923, 975, 815, 1020, 906,
  901, 1170, 912, 746, 919, 718, 714, 740,
];

/** Durbin and Koopman 2012, section 2.2.5: the variances they use for it. */
export const nileModel = { readingVar: 15099, levelVarPerDay: 1469.1 };

/** Yearly readings, one "day" apart; years counted from 1 in `missing` are left out. */
export function nileReadings(missing: (year: number) => boolean = () => false) {
  return nile.map((value, i) => ({ daysSince: 1, value: missing(i + 1) ? null : value }));
}
