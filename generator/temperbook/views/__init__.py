"""What is said: one page kind, chart or pack a module. No markup, no coordinates."""
