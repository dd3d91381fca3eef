#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Sends a table through a filter on the workers of a Dask cluster (https://www.dask.org; Debian: python3-distributed).

    filter_on_dask.py --work FOLDER [--scheduler ADDRESS] [--piece ROWS] -- name_format --record  <leaves.tsv >named.tsv

The table is cut into pieces of so many rows; a worker runs the filter on a piece and returns what it wrote. The order of rows is
kept, and the result is byte for byte what one run of the filter gives. A finished piece is kept in FOLDER, so a run that was
interrupted continues where it ended when it is started again with the same table. Without --scheduler two workers are
started on this machine. The filter must be installed on every worker. Exit code 1 when a piece fails after three tries.
"""
import argparse
import itertools
import os
import subprocess
import sys
from pathlib import Path


def run(command, piece):
    """On a worker: the piece goes in, what the filter writes comes out."""
    done = subprocess.run(command, input=piece, capture_output=True)
    if done.returncode != 0:
        raise RuntimeError(f"{command[0]}: exit code {done.returncode}: {done.stderr.decode(errors='replace')[:300]}")
    return done.stdout


def pieces(lines, rows):
    """The rows after the header, so many at a time, as bytes."""
    while piece := b"".join(itertools.islice(lines, rows)):
        yield piece


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("--work", required=True, type=Path, help="folder for finished pieces")
    parser.add_argument("--scheduler", help="address of a Dask scheduler, such as tcp://10.0.0.1:8786")
    parser.add_argument("--piece", type=int, default=20000, help="rows in a piece")
    parser.add_argument("filter", nargs="+", help="the program and its options, after --")
    told = parser.parse_args()

    from distributed import Client, LocalCluster

    told.work.mkdir(parents=True, exist_ok=True)
    table = sys.stdin.buffer
    header = table.readline()
    columns = header.decode("utf-8-sig").rstrip("\r\n").replace("\t", ",")
    # The header of the answer is the filter's own; pieces have none.
    sys.stdout.buffer.write(run(told.filter, header))
    command = [*told.filter, "--columns", columns]

    cluster = None if told.scheduler else LocalCluster(n_workers=2, threads_per_worker=1, dashboard_address=None)
    with Client(told.scheduler or cluster) as client:
        # Four pieces a worker are under way, so memory is bounded whatever the size of the table.
        most = 4 * max(1, len(client.scheduler_info()["workers"]))
        under_way = []

        def finish():
            place, answer = under_way.pop(0)
            if not isinstance(answer, bytes):
                answer = answer.result()
                part = place.with_suffix(".part")
                part.write_bytes(answer)
                os.replace(part, place)  # a piece is there as a whole or not at all
            sys.stdout.buffer.write(answer)

        for number, piece in enumerate(pieces(table, told.piece)):
            place = told.work / f"{number:08}.out"
            if place.exists():
                under_way.append((place, place.read_bytes()))
            else:
                under_way.append((place, client.submit(run, command, piece, retries=2, pure=False)))
            if len(under_way) >= most:
                finish()
        while under_way:
            finish()
    if cluster:
        cluster.close()


if __name__ == "__main__":
    try:
        main()
    except (RuntimeError, OSError) as error:
        print(f"filter_on_dask.py: {error}", file=sys.stderr)
        sys.exit(1)
