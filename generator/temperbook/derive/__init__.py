"""Records and metal together: the finished handbook that views speak from."""
