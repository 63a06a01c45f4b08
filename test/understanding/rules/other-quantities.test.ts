import { describe } from 'vitest';
import { understood } from './expect-understood.ts';

describe('reservoir changes', () => {
  understood({
    'changed the gutter reservoir, 118 l fresh': 'Gutter run reservoir-change 118',
    'changed the dwc': 'Bucket row reservoir-change ~108',
    'changed the dwc reservoir': 'Bucket row reservoir-change ~108',
    'changed the water in the jars': 'Jar shelf reservoir-change ~24',
    'changed the solution in the dwc, 100 l': 'Bucket row reservoir-change 100',
    'fresh solution in the dwc': 'Bucket row reservoir-change ~108',
    'fresh solution in the jars, 20 l': 'Jar shelf reservoir-change 20',
    'new solution for the bench, 550 litres': 'North bench reservoir-change 550',
    'emptied and refilled the jars': 'Jar shelf reservoir-change ~24',
    'emptied and refilled the jars with 20 l': 'Jar shelf reservoir-change 20',
    'emptied the jars and refilled with fresh mix': 'Jar shelf reservoir-change ~24',
    'drained the gutters, filled with 100 l new mix': 'Gutter run reservoir-change 100',
    'changed the jars, fresh solution in, 20 l': 'Jar shelf reservoir-change 20',
    'changed the jars, new solution in the gutters':
      'Jar shelf reservoir-change ~24; Gutter run reservoir-change ~120',
    'emptied the jars and refilled them with 20 l': 'Jar shelf reservoir-change 20',
    'emptied the jars and refilled them': 'Jar shelf reservoir-change ~24',
    'emptied the dwc, refilled with 100 l': 'Bucket row reservoir-change 100',
    'drained and refilled the nft': 'Gutter run reservoir-change ~120',
    'did a full change on the dwc': 'Bucket row reservoir-change ~108',
    'full water change on the dwc, 105 l': 'Bucket row reservoir-change 105',
    'dwc: water change': 'Bucket row reservoir-change ~108',
    'dwc reservoir change 100 l': 'Bucket row reservoir-change 100',
    'swapped the nutrients in the nft': 'Gutter run reservoir-change ~120',
    'changed the batteries in the stick': '? unclear (keep-as-note)',
    'changed the lid on the jars': '? unclear (keep-as-note)',
    'changed the bench filter': '? unclear (keep-as-note)',
    'changed the bench pump': '? unclear (keep-as-note)',
    "changed the jars' lids": '? unclear (keep-as-note)',
    'changed everything':
      'North bench reservoir-change ~600; Bucket row reservoir-change ~108; Gutter run reservoir-change ~120; Jar shelf reservoir-change ~24',
    'changed the dwc and the nft':
      'Bucket row reservoir-change ~108; Gutter run reservoir-change ~120',
    'changed the dwc, ph 5.8 ec 1.6':
      'Bucket row reservoir-change ~108; Bucket row ph 5.8; Bucket row ec 1.6',
    'changed the dwc 100 l, ph 5.8, ec 1.6':
      'Bucket row reservoir-change 100; Bucket row ph 5.8; Bucket row ec 1.6',
    'changed the venturi to 10 min an hour': 'Gutter run aeration 10',
    'changed my mind': '? unclear (keep-as-note)',
    'changed dwc res today': 'Bucket row reservoir-change ~108',
    'changed the dwc yesterday with 100 l': 'Bucket row reservoir-change ~100 at 3 May 12:00',
    'changed the dwc with 120 l': '? out-of-range (12, 0.12)',
  });
});

describe('calibrations', () => {
  understood({
    'calibrated the pen: 7.00 read 7.12, 4.01 read 4.08':
      'greenhouse calibration 7 pen read 7.12; greenhouse calibration 4.01 pen read 4.08',
    'calibrated pen, 7.00 read 7.12 and 4.01 read 4.08':
      'greenhouse calibration 7 pen read 7.12; greenhouse calibration 4.01 pen read 4.08',
    'pen calibrated: 7.00 -> 7.12, 4.01 -> 4.08':
      'greenhouse calibration 7 pen read 7.12; greenhouse calibration 4.01 pen read 4.08',
    'calibrated the stick, 1.413 read 1.38': 'greenhouse calibration 1.41 stick read 1.38',
    'calibrated the stick: 1413 read 1380': 'greenhouse calibration 1.41 stick read 1.38',
    'calibrated the stick, 1,413 µS showed 1.38 mS': 'greenhouse calibration 1.41 stick read 1.38',
    'calibrated: 7.00 read 7.12': 'greenhouse calibration 7 pen read 7.12',
    'pen read 7.12 in the 7.00 buffer': 'greenhouse calibration 7 pen read 7.12',
    'calibrated the pen, read 7.12 in the 7.00 and 4.08 in the 4.01':
      'greenhouse calibration 7 pen read 7.12; greenhouse calibration 4.01 pen read 4.08',
    'calibrated the pen at 7.00 and 4.01': '? missing-amount (done-without-figures)',
    'calibrated the pen yesterday, 7 read 7.1':
      'greenhouse calibration ~7 pen read 7.1 at 3 May 12:00',
    'the 4.01 solution ran out': '? unclear (keep-as-note)',
    'ph 4.01 buffer is nearly empty': '? unclear (keep-as-note)',
    'pen reads 7.02 in 7.00, 4.03 in 4.01':
      'greenhouse calibration 7 pen read 7.02; greenhouse calibration 4.01 pen read 4.03',
    'calibrated the pen, 7.00 read 7.12, dwc ph 5.8':
      'greenhouse calibration 7 pen read 7.12; Bucket row ph 5.8',
    'calibrated both probes': '? missing-amount',
    'calibrated the pen with 7.00 and 4.01, all good': '? missing-amount (done-without-figures)',
  });
});

describe('harvests', () => {
  understood({
    'picked 1.2 kg from the buckets': 'Bucket row harvest 1200',
    'picked 1.2kg off the buckets and 300 g from the jars':
      'Bucket row harvest 1200; Jar shelf harvest 300',
    'harvested 300 g of basil': 'Gutter run harvest 300',
    'picked 12 cucumbers': '? missing-amount',
    'picked a kilo of tomatoes': 'North bench harvest 1000',
    'picked half a kilo of tomatoes': 'North bench harvest 500',
    'picked 2 lbs of tomatoes from the bench': 'North bench harvest 907.18',
    'harvest: bench 1.5 kg, buckets 800 g': 'North bench harvest 1500; Bucket row harvest 800',
    'got 1.2 kg off the buckets': 'Bucket row harvest 1200',
    'picked 1.2 kg': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'picked 60 kg from the bench': '? out-of-range (60, 6000)',
    'cut 200 g of lettuce': 'Jar shelf harvest 200',
  });
});

describe('fill times and aeration', () => {
  understood({
    'bench fill took 9 min': 'North bench fill-time 9',
    'bench flood took 9 minutes': 'North bench fill-time 9',
    'fill time on the bench 9 min': 'North bench fill-time 9',
    'bench filled in 9 min': 'North bench fill-time 9',
    'took 9 min to fill the bench': 'North bench fill-time 9',
    'bench fill took 90 seconds': 'North bench fill-time 1.5',
    'bench took 9 min to flood': 'North bench fill-time 9',
    'bench fill took 9': '? which-unit (9)',
    'fill took 9 min': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'bench fill took 200 min': '? out-of-range (20, 2)',
    'venturi to 10 min an hour': 'Gutter run aeration 10',
    'venturi to 10 min': 'Gutter run aeration 10',
    'set the venturi to 10 minutes per hour': 'Gutter run aeration 10',
    'nft venturi now 15 min/h': 'Gutter run aeration 15',
    'gutters aeration 10 min/h': 'Gutter run aeration 10',
    'air stones nonstop': 'Bucket row aeration 60',
    'air pump on the dwc now 30 min per hour': 'Bucket row aeration 30',
    'venturi to 70 min an hour': '? out-of-range (7, 0.7)',
    'venturi at 10 min every hour': 'Gutter run aeration 10',
    'turned the venturi up to 12 min/h': 'Gutter run aeration 12',
  });
});

describe('outages', () => {
  understood({
    'power out since 7:30': 'greenhouse outage 1 power at 4 May 07:30',
    'power out': 'greenhouse outage 1 power',
    "power's out": 'greenhouse outage 1 power',
    'no power': 'greenhouse outage 1 power',
    'power cut': 'greenhouse outage 1 power',
    'power back': 'greenhouse restored 1 power',
    'power just came back, was off about an hour':
      'greenhouse outage ~1 power at 4 May 07:20; greenhouse restored 1 power',
    "power's back, it was out for 2 hours":
      'greenhouse outage ~1 power at 4 May 06:20; greenhouse restored 1 power',
    'power is back on, it was off since 5':
      'greenhouse outage ~1 power at 4 May 05:00; greenhouse restored 1 power',
    'power back at 7, was off 20 min':
      'greenhouse outage ~1 power at 4 May 06:40; greenhouse restored 1 power at 4 May 07:00',
    'pump on the gutters is running again, was off for 20 minutes':
      'Gutter run outage ~1 pump at 4 May 08:00; Gutter run restored 1 pump',
    'power back, bench pump was off for an hour':
      'greenhouse restored 1 power; North bench outage ~1 pump at 4 May 07:20; North bench restored ~1 pump',
    "power's back on": 'greenhouse restored 1 power',
    'power is back since 7': 'greenhouse restored 1 power at 4 May 07:00',
    'power was out but is back now': 'greenhouse outage 1 power; greenhouse restored 1 power',
    'power out at 2, back at 4':
      'greenhouse outage 1 power at 4 May 02:00; greenhouse restored 1 power at 4 May 04:00',
    'power out for 2 hours': 'greenhouse outage 1 power at 4 May 06:20',
    'air pump dead on the dwc': 'Bucket row outage 1 air-pump',
    "air pump's dead": 'Bucket row outage 1 air-pump',
    'the air pump died': 'Bucket row outage 1 air-pump',
    'bench pump not running': 'North bench outage 1 pump',
    'pump dead on the bench': 'North bench outage 1 pump',
    'flood pump dead': 'North bench outage 1 pump',
    'pump dead': '? which-system (North bench, Bucket row, Gutter run, Jar shelf)',
    'nft pump stopped': 'Gutter run outage 1 pump',
    'no bubbles in the dwc': 'Bucket row outage 1 air-pump',
    'air pump back on': 'Bucket row restored 1 air-pump',
    'dwc air pump working again': 'Bucket row restored 1 air-pump',
    'bench pump fixed': 'North bench restored 1 pump',
    'power out since 14:30': 'greenhouse outage 1 power; ? since-when (time)',
    'power out since yesterday': 'greenhouse outage ~1 power at 3 May 12:00',
    'power went out an hour ago': 'greenhouse outage 1 power at 4 May 07:20',
    'power was out from 2 to 4':
      'greenhouse outage 1 power at 4 May 02:00; greenhouse restored 1 power at 4 May 04:00',
  });
});
