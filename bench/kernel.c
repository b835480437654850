/* The arithmetic of packages/core/src/winter/kernel.ts in C, for the bench only: reads one binary file, prints seconds and a checksum. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static double laying(double on_ramp, double by_bees) {
  double gap = on_ramp - by_bees;
  double laid = 0.5 * (on_ramp + by_bees - sqrt(gap * gap + 20.0 * 20.0));
  return laid > 0 ? laid : 0;
}

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return t.tv_sec + 1e-9 * t.tv_nsec;
}

int main(int argc, char **argv) {
  if (argc != 3) return 2;
  FILE *f = fopen(argv[1], "rb");
  if (!f) return 2;
  int repeats = atoi(argv[2]);
  double head[16];
  if (fread(head, sizeof(double), 16, f) != 16) return 2;
  int members = (int)head[0], days = (int)head[1], ramps = (int)head[2];
  double G = head[3], bee_kg = head[4], bend2 = head[5], loose = head[6], span = head[7], width2 = head[8], basal_width = head[9];
  double kg_per_w = head[10], per_nest = head[11], lead = head[12], per_turnover = head[13], brood_heat = head[14], emerge = head[15];
  double tail[2];
  if (fread(tail, sizeof(double), 2, f) != 2) return 2;
  double food = tail[0], eggs_per_bee = tail[1];
  long cells_of = (long)members * days;
  double *temp = malloc(3 * cells_of * sizeof(double)), *basal_of = temp + cells_of, *warm_of = basal_of + cells_of;
  double *draws = malloc(7L * members * sizeof(double)), *ramp = malloc(ramps * sizeof(double)), *use = malloc(cells_of * sizeof(double));
  if (fread(temp, sizeof(double), 3 * cells_of, f) != (size_t)(3 * cells_of)) return 2;
  if (fread(draws, sizeof(double), 7L * members, f) != (size_t)(7L * members)) return 2;
  if (fread(ramp, sizeof(double), ramps, f) != (size_t)ramps) return 2;
  fclose(f);
  double *bees = draws, *winter = bees + members, *spring = winter + members, *start_of = spring + members, *scale_of = start_of + members;
  double *flight_of = scale_of + members, *end = flight_of + members;
  double best = 1e9, sum = 0;
  for (int rep = 0; rep < repeats; rep++) {
    double t0 = now();
    for (int i = 0; i < members; i++) {
      double eggs[21], n = bees[i], cells = 0, scale = scale_of[i], mu = winter[i], rise = spring[i] - winter[i];
      int start = (int)(start_of[i] < days + 21 ? start_of[i] : days + 21), last = ramps - 1, flight = (int)flight_of[i];
      for (int age = 1; age <= 21; age++) {
        int since = -age - start;
        double laid = since >= 0 ? laying(ramp[since < last ? since : last] * scale, n * eggs_per_bee) : 0;
        eggs[21 - age] = laid;
        cells += laid;
      }
      int slot = 0, fed = 21 - 6;
      for (int d = 0; d < days; d++) {
        long k = (long)i * days + d;
        double m = n * bee_kg, m2 = m * m;
        double a = lead * m * sqrt(sqrt(sqrt((m2 + bend2) / (m2 * m2))));
        double half = a * 0.5, A = G + half, cold = temp[k] - loose, B = G * cold + a * span, D = A * A - half * half;
        double heat = G * ((A * B + half * sqrt(B * B + width2 * D)) / D - cold);
        double over = heat - m * basal_of[k], w = m * basal_width;
        double resting = heat + 0.5 * (sqrt(over * over + w * w) - over);
        double nest = cells * per_nest;
        double power = (resting + m * warm_of[k]) * (1 + brood_heat * (nest < 1 ? nest : 1));
        use[k] = power * kg_per_w + food * eggs[fed];
        double turned = 0;
        if (d > flight) {
          turned = (d - flight) * per_turnover;
          turned = turned >= 1 ? 1 : turned * turned * (3 - 2 * turned);
        }
        n *= 1 - mu - rise * turned;
        if (d >= start || cells > 0) {
          double emerged = eggs[slot];
          n += emerge * emerged;
          int since = d - start;
          double laid = since >= 0 ? laying(ramp[since < last ? since : last] * scale, n * eggs_per_bee) : 0;
          cells += laid - emerged;
          eggs[slot] = laid;
        }
        slot = slot + 1 == 21 ? 0 : slot + 1;
        fed = fed + 1 == 21 ? 0 : fed + 1;
      }
      end[i] = n;
    }
    double took = now() - t0;
    if (took < best) best = took;
  }
  for (long k = 0; k < cells_of; k++) sum += use[k];
  for (int i = 0; i < members; i++) sum += end[i];
  printf("%.9f %.17g\n", best, sum);
  return 0;
}
