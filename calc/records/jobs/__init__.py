"""One page for a job, from the answers of several worksheets: a lift, a pull, a load on a truck."""
