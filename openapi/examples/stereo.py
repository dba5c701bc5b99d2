#!/usr/bin/env python3
"""Asks which stereo pair spreads three horns, with a long and with a short bar, and checks the best.

    stereo.py [ADDRESS]

Standard library only. Without an address STANDOFF_URL is taken, or the usual one. Exits 1 where a
solution, asked for its geometry, does not return the wish.
"""

import json
import os
import sys
import urllib.request

MODEL = "core/straight-trade"
HORNS = ["trumpet", "alto", "trombone"]
PLACE = {"x": 9.1, "y": 6.7, "z": 2.0}
WISH_PCT = 97
WITHIN_PCT = 0.5


def ask(service, path, question):
    request = urllib.request.Request(
        service + path,
        data=json.dumps(question).encode(),
        headers={"Content-Type": "application/json", "Accept": "application/json"},
    )
    with urllib.request.urlopen(request, timeout=30) as response:
        return json.load(response)


def fit(service, bar_m):
    return ask(
        service,
        "/v1/stereo/fit",
        {
            "ensemble": "boathouse/saltlight-twelve",
            "player_ids": HORNS,
            "stand": {"position_m": PLACE},
            "bar_most_m": bar_m,
            "microphones": [
                {"microphone": "boathouse/ldc-multi-1", "count": 3, "matched": True}
            ],
            "wish": {"fill_pct": WISH_PCT, "fill_within_pct": WITHIN_PCT},
            "models": [MODEL, "core/two-region"],
        },
    )


def geometry(service, solution):
    question = {
        "pair": solution["pair"],
        "pattern": solution["pattern"],
        "microphone": "boathouse/ldc-multi-1",
        "place": solution["place"],
        "ensemble": "boathouse/saltlight-twelve",
        "players": HORNS,
        "models": [MODEL],
    }
    question.update(solution["parameters"])
    return ask(service, "/v1/stereo/geometry", question)


def filled_pct(answer):
    images = [source["images"][0]["position_pct"] for source in answer["sources"]]
    return (max(images) - min(images)) / 2


def words(parameters):
    return ", ".join(f"{name} {value:g}" for name, value in parameters.items())


def main():
    service = (
        sys.argv[1]
        if len(sys.argv) > 1
        else os.environ.get("STANDOFF_URL", "http://127.0.0.1:8080")
    )
    wrong = False
    for bar_m in (0.6, 0.2):
        answer = fit(service, bar_m)
        print(f"bar of {bar_m} m: {answer['solution_count']} solutions")
        for solution in answer["solutions"]:
            back = filled_pct(geometry(service, solution))
            wrong = wrong or abs(back - WISH_PCT) > WITHIN_PCT
            print(
                f"  {solution['rank']}. {solution['pair']} {solution['pattern']}:"
                f" {words(solution['parameters'])};"
                f" fills {back:.1f} %, loses {solution['worst_mono_loss_db']:.1f} dB in mono"
            )
        for unfit in answer["why_not"][:3]:
            print(f"  not {unfit['pair']}: {unfit['detail']}")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
