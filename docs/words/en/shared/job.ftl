# What the reader calls the job: asked on every worksheet of which one page is made for a lift, a pull or a load.

input-job = The job, by name or number
    .help = Type the same in each worksheet of one job. The page for the job bears it, and refuses worksheets of two jobs.
