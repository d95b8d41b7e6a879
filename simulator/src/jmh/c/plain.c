/*
 * The yardstick: a textbook loop over the dish of the benchmarks, one pseudo-random ray at a time, that counts hits.
 *
 *   plain disc|pan RAYS SEED
 *
 * prints the nanoseconds per ray and the share of rays that hit (pan: of those that the mirrors reflect or the pan shades).
 * disc: flat panels, sun, slope error, a bare disc in the focus. pan: a level pan under a sun 25 degrees high that shades
 * the mirrors, beam spread with a wide part, panels glued askew.
 */
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

enum { SECTORS = 24, RINGS = 6 };
static const double PI = 3.14159265358979323846;
static const double FOCUS = 0.8, HUB = 0.03, RIM = 0.6, SUN = 4.65e-3, SLOPE = 5e-3;
static const double SPREAD = 1e-3, WIDE_SHARE = 0.05, WIDE_SPREAD = 20e-3, PANEL_TILT = 4e-3;
static const double ELEVATION = 25, RADIUS = 0.12, HEIGHT = 0.11;

static uint64_t state;
static double tiltX[SECTORS * RINGS], tiltY[SECTORS * RINGS];
static double axisX, axisZ; /* level and up, along the dish's axis */

/* splitmix64 */
static inline double uniform(void) {
    uint64_t z = state += 0x9E3779B97F4A7C15u;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
    return (double)((z ^ (z >> 31)) >> 11) * 0x1p-53;
}

typedef struct { double x, y, z; } vec;

static inline double dot(vec a, vec b) { return a.x * b.x + a.y * b.y + a.z * b.z; }

/* A place on a panel, its normal and its number. */
static inline int place(vec *p, vec *n) {
    double half = PI / SECTORS;
    int sector = (int)(uniform() * SECTORS);
    double corner = sqrt(HUB * HUB + (RIM * RIM - HUB * HUB) * uniform());
    double x = corner * cos(half);
    double y = (2 * uniform() - 1) * x * tan(half);
    int ring = (int)((corner - HUB) / (RIM - HUB) * RINGS);
    double inner = HUB + ring * (RIM - HUB) / RINGS;
    double outer = HUB + (ring + 1) * (RIM - HUB) / RINGS;
    double slope = (outer + inner) / (4 * FOCUS * cos(half));
    double c = cos((2 * sector + 1) * half), s = sin((2 * sector + 1) * half);
    double nz = 1 / sqrt(1 + slope * slope);
    *p = (vec){x * c - y * s, x * s + y * c, inner * inner / (4 * FOCUS) + (x - inner * cos(half)) * slope};
    *n = (vec){-slope * nz * c, -slope * nz * s, nz};
    return sector * RINGS + ring;
}

static inline vec sunward(void) {
    double off = SUN * sqrt(uniform());
    double round = 2 * PI * uniform();
    return (vec){sin(off) * cos(round), sin(off) * sin(round), cos(off)};
}

/* n tilted by a Gaussian error about both axes. */
static inline vec tilted(vec n, double sigma) {
    double tilt = sigma * sqrt(-2 * log(1 - uniform()));
    double way = 2 * PI * uniform();
    return (vec){n.x + tilt * cos(way), n.y + tilt * sin(way), n.z};
}

static inline vec reflected(vec s, vec m) {
    double twice = 2 * dot(m, s) / dot(m, m);
    return (vec){twice * m.x - s.x, twice * m.y - s.y, twice * m.z - s.z};
}

static int hitsDisc(void) {
    vec p, n;
    place(&p, &n);
    vec r = reflected(sunward(), tilted(n, SLOPE));
    double t = (FOCUS - p.z) / r.z;
    double x = p.x + t * r.x, y = p.y + t * r.y;
    return x * x + y * y <= 0.06 * 0.06;
}

/* From the dish's frame to the pan's: level away from the sun, across, up. */
static inline vec turned(vec v) { return (vec){v.x * axisZ - v.z * axisX, v.y, v.x * axisX + v.z * axisZ}; }

/* Whether the line from p along d meets the pan. */
static inline int meetsPan(vec p, vec d) {
    if (!(d.z > 0)) {
        return 0;
    }
    double before = p.z < 0 ? -p.z / d.z : 0;
    double x = p.x + before * d.x, y = p.y + before * d.y, z = p.z < 0 ? 0 : p.z;
    double c = x * x + y * y - RADIUS * RADIUS;
    if (p.z < 0 && c <= 0) {
        return 1;
    }
    double b = x * d.x + y * d.y, a = d.x * d.x + d.y * d.y;
    double root2 = b * b - a * c;
    if (b >= 0 || root2 <= 0) {
        return 0;
    }
    z += d.z * (-b - sqrt(root2)) / a;
    return z >= 0 && z <= HEIGHT;
}

static int hitsWallFromSide(vec p, vec d) {
    double a = d.x * d.x + d.y * d.y, b = p.x * d.x + p.y * d.y;
    double root2 = b * b - a * (p.x * p.x + p.y * p.y - RADIUS * RADIUS);
    if (b >= 0 || root2 <= 0) {
        return 0;
    }
    double z = p.z + d.z * (-b - sqrt(root2)) / a;
    if (z >= 0 && z <= HEIGHT) {
        return 1;
    }
    double t = ((z < 0 ? 0 : HEIGHT) - p.z) / d.z;
    double x = p.x + t * d.x, y = p.y + t * d.y;
    return t > 0 && (z < 0) == (p.z < 0) && x * x + y * y <= RADIUS * RADIUS;
}

static int hitsPan(void) {
    vec p, n;
    int panel = place(&p, &n);
    vec s = sunward();
    p.z -= FOCUS;
    vec q = turned(p), sun = turned(s);
    if (meetsPan(q, sun)) {
        return 0;
    }
    n.x += tiltX[panel];
    n.y += tiltY[panel];
    vec r = reflected(s, tilted(n, SLOPE));
    r = tilted(r, uniform() < WIDE_SHARE ? WIDE_SPREAD : SPREAD);
    r = turned(r);
    return q.z < 0 ? meetsPan(q, r) : hitsWallFromSide(q, r);
}

static double now(void) {
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return t.tv_sec + 1e-9 * t.tv_nsec;
}

static void glue(void) {
    for (int k = 0; k < SECTORS * RINGS; k++) {
        double tilt = PANEL_TILT * sqrt(-2 * log(1 - uniform())), way = 2 * PI * uniform();
        tiltX[k] = tilt * cos(way);
        tiltY[k] = tilt * sin(way);
    }
}

int main(int argc, char **argv) {
    if (argc != 4) {
        return 2;
    }
    int pan = strcmp(argv[1], "pan") == 0;
    long rays = atol(argv[2]), hits = 0;
    state = strtoull(argv[3], NULL, 10) * 0x632BE59BD9B4E019u;
    axisX = cos(ELEVATION * PI / 180);
    axisZ = sin(ELEVATION * PI / 180);
    glue();
    double start = now();
    for (long k = 0; k < rays; k++) {
        hits += pan ? hitsPan() : hitsDisc();
    }
    double seconds = now() - start;
    printf("%.3f %.6f\n", 1e9 * seconds / rays, (double)hits / rays);
    return 0;
}
