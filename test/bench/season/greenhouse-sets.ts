/** The systems of the bench's greenhouses, and how much each drinks when grown on a fair day. */
export interface BenchSystem {
  readonly name: string;
  readonly alias: string;
  readonly method: 'flood-and-drain' | 'deep-water-culture' | 'nutrient-film' | 'non-circulating';
  readonly brimL: number;
  readonly lowL: number;
  readonly depthCm: number;
  readonly crop: string;
  readonly plants: number;
  /** Centre of the hidden use of a grown crop, L/day. */
  readonly grownLPerDay: number;
}

const bench: BenchSystem = {
  name: 'North bench',
  alias: 'bench',
  method: 'flood-and-drain',
  brimL: 600,
  lowL: 150,
  depthCm: 80,
  crop: 'tomato',
  plants: 20,
  grownLPerDay: 42,
};
const buckets: BenchSystem = {
  name: 'Bucket row',
  alias: 'buckets',
  method: 'deep-water-culture',
  brimL: 108,
  lowL: 72,
  depthCm: 30,
  crop: 'cucumber',
  plants: 6,
  grownLPerDay: 7,
};
const gutters: BenchSystem = {
  name: 'Gutter run',
  alias: 'gutters',
  method: 'nutrient-film',
  brimL: 120,
  lowL: 40,
  depthCm: 40,
  crop: 'basil',
  plants: 36,
  grownLPerDay: 9,
};
const jars: BenchSystem = {
  name: 'Jar shelf',
  alias: 'jars',
  method: 'non-circulating',
  brimL: 24,
  lowL: 4,
  depthCm: 18,
  crop: 'lettuce',
  plants: 12,
  grownLPerDay: 1.2,
};
const peppers: BenchSystem = {
  name: 'Pepper tubs',
  alias: 'tubs',
  method: 'deep-water-culture',
  brimL: 160,
  lowL: 100,
  depthCm: 35,
  crop: 'pepper',
  plants: 8,
  grownLPerDay: 8,
};
const berries: BenchSystem = {
  name: 'Berry rail',
  alias: 'rail',
  method: 'nutrient-film',
  brimL: 80,
  lowL: 25,
  depthCm: 30,
  crop: 'strawberry',
  plants: 40,
  grownLPerDay: 6,
};

export const greenhouseSets: Readonly<Record<string, readonly BenchSystem[]>> = {
  one: [bench],
  three: [bench, buckets, gutters],
  four: [bench, buckets, gutters, jars],
  six: [bench, buckets, gutters, jars, peppers, berries],
};
