"""A second opinion on voltage drop: random trees of cords, solved by a power-flow library.

    python3 -m venv venv && venv/bin/pip install pandapower==3.5.6
    venv/bin/python tests/core/power_flow/record.py > tests/core/power_flow/record.jsonl

The tests read the record; they do not run this. Trees are drawn with a fixed random state, so the
same library gives the same record.

One phase out and back is solved as a balanced network whose line resistance is that of the loop:
P R / V is the same in both. Resistances are those of NFPA 70 (NEC), Chapter 9 Table 8, stranded
copper at 75 degrees C, in ohm per 1000 ft.
"""

import json
import random
import sys

import pandapower as pp

OHM_PER_KILOFOOT = {18: 7.95, 16: 4.99, 14: 3.14, 12: 1.98, 10: 1.24, 8: 0.778, 6: 0.491}
TREES = 240
VOLTS = 120.0


def tree(chance):
    """Cords, each from the source (-1) or another cord; loads at the ends of cords."""
    cords = []
    for index in range(chance.randint(1, 7)):
        cords.append(
            {
                "from": chance.randint(-1, index - 1),
                "gauge": chance.choice(list(OHM_PER_KILOFOOT)),
                "feet": 5 * chance.randint(1, 20),
            }
        )
    # The library takes the mean of how the loads of one bus behave, unweighted, which is wrong for
    # a mixture; so the loads at one end are of one kind here.
    kinds = [chance.choice(["heater", "electronic"]) for _ in cords]
    loads = []
    for _ in range(chance.randint(1, 5)):
        at = chance.randrange(len(cords))
        # Whole tenths of an ampere at 120 V.
        loads.append({"at": at, "watts": 12 * chance.randint(1, 60), "kind": kinds[at]})
    return cords, loads


def solve(cords, loads, constant_current):
    """Volts at the end of each cord, or None when the network has no solution."""
    net = pp.create_empty_network(sn_mva=1)
    source = pp.create_bus(net, vn_kv=VOLTS / 1000)
    pp.create_ext_grid(net, source)
    ends = []
    for cord in cords:
        end = pp.create_bus(net, vn_kv=VOLTS / 1000)
        begin = source if cord["from"] < 0 else ends[cord["from"]]
        loop = 2 * OHM_PER_KILOFOOT[cord["gauge"]] * cord["feet"] / 1000
        # One kilometre of it, so that ohms per kilometre are ohms.
        pp.create_line_from_parameters(
            net, begin, end, length_km=1, r_ohm_per_km=loop, x_ohm_per_km=1e-3,
            c_nf_per_km=0, max_i_ka=1,
        )
        ends.append(end)
    for load in loads:
        heater = load["kind"] == "heater"
        pp.create_load(
            net, ends[load["at"]], p_mw=load["watts"] / 1e6,
            const_z_p_percent=100 if heater and not constant_current else 0,
            const_i_p_percent=100 if constant_current else 0,
        )
    try:
        pp.runpp(net, tolerance_mva=1e-9, max_iteration=50, numba=False)
    except pp.LoadflowNotConverged:
        return None
    return [round(float(net.res_bus.vm_pu[end]) * VOLTS, 6) for end in ends]


def main():
    chance = random.Random(20)
    trees = []
    while len(trees) < TREES:
        cords, loads = tree(chance)
        nominal = solve(cords, loads, constant_current=True)
        settled = solve(cords, loads, constant_current=False)
        # Below 60 V our own solver gives up, as it should: such a line is past use.
        if nominal is None or settled is None or min(nominal + settled) < 65:
            continue
        trees.append({"cords": cords, "loads": loads, "nominal": nominal, "settled": settled})
    json.dump(
        {"made_with": f"pandapower {pp.__version__}", "volts": VOLTS},
        sys.stdout,
    )
    print()
    for each in trees:
        print(json.dumps(each, separators=(",", ":")))


if __name__ == "__main__":
    main()
