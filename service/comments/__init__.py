"""What people wrote: an export's text made into Comment values, with honest times."""
