"""The handbook as a site: MkDocs carries it, our templates and our look make it."""
