// Does nothing: what a process costs before it does anything.
return;
