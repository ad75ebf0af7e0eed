/* The batch case of the benchmark in C: 6-part tackle hauled from its fixed block, lead block, ratchet; hauling and easing.
   Reads the numbers of cases and repeats; prints the best time of a pass in seconds and two sums of the answers. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static const double pi = 3.14159265358979323846;

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

int main(int argc, char **argv) {
  const long cases = argc > 1 ? atol(argv[1]) : 2000000;
  const int repeats = argc > 2 ? atoi(argv[2]) : 9;
  double *load = malloc(sizeof(double) * cases), *bearing = malloc(sizeof(double) * cases);
  double *bending = malloc(sizeof(double) * cases), *tread = malloc(sizeof(double) * cases);
  double *hauling = malloc(sizeof(double) * cases), *easing = malloc(sizeof(double) * cases);
  for (long i = 0; i < cases; i++) {
    load[i] = 50.0 + (double)(i % 1000);
    bearing[i] = 0.5 + (double)(i % 97) / 97.0;
    bending[i] = 0.5 + (double)(i % 89) / 89.0;
    tread[i] = 0.5 + (double)(i % 83) / 83.0;
  }
  const double d = 0.006, pitch = 0.04 + d, unit = 0.01 * (0.011 / (pitch / 2)), cosine = cos(pi);
  const double scale = d * d / pitch, bend = 60.0 * scale, bendDrag = (40.0 + 1e6 * d * d) * scale;
  const double drag = 0.05, grip = 0.32 * pi;
  double best = 1e9;
  for (int repeat = 0; repeat < repeats; repeat++) {
    const double start = now();
    for (long i = 0; i < cases; i++) {
      const double m = unit * bearing[i], half = 1 - m * m * cosine, whole = 1 - m * m;
      const double own = (half + sqrt(fmax(0, (half - whole) * (half + whole)))) / whole;
      const double bent = 1 + bend * bending[i], softDrag = bendDrag * bending[i];
      const double k = own * bent, c = own * softDrag + drag;
      const double gripOwn = exp(grip * tread[i]);
      const double gripK = gripOwn * bent, gripC = gripOwn * softDrag + drag;
      double series = 0, allSeries = 0;
      for (int turn = 0; turn < 5; turn++) {
        series = 1 + k * series;
        allSeries += series;
      }
      double hand = (1 + (k - 1) * series) * ((load[i] - allSeries * c) / (1 + k * series)) + series * c;
      for (int turn = 0; turn < 3; turn++) hand = k * hand + c;
      hauling[i] = fmax(0, hand);
      const double inverse = 1 / k, back = -c * inverse;
      series = allSeries = 0;
      for (int turn = 0; turn < 5; turn++) {
        series = 1 + inverse * series;
        allSeries += series;
      }
      hand = (1 + (inverse - 1) * series) * ((load[i] - allSeries * back) / (1 + inverse * series)) + series * back;
      for (int turn = 0; turn < 2; turn++) hand = inverse * hand + back;
      hand = fmax(0, hand);
      const double gripInverse = 1 / gripK;
      easing[i] = fmax(0, gripInverse * hand - gripC * gripInverse);
    }
    const double took = now() - start;
    if (took < best) best = took;
  }
  double haulSum = 0, easeSum = 0;
  for (long i = 0; i < cases; i++) {
    haulSum += hauling[i];
    easeSum += easing[i];
  }
  printf("%.9g %.15g %.15g\n", best, haulSum, easeSum);
  return 0;
}
